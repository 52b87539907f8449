import { resolve } from "node:path";
import ts from "typescript";
import type { CodeBlock } from "./code-blocks.js";

/**
 * Type-checks blocks of code in one program, with the project's own settings and each block a
 * module of its own. Answers the errors of each block as `file:line: message`.
 */
export function typeErrors(
  blocks: readonly CodeBlock[],
): ReadonlyMap<CodeBlock, readonly string[]> {
  const options = compilerOptions();
  const texts = new Map(blocks.map((block) => [moduleOf(block), atItsLine(block)]));
  const host = ts.createCompilerHost(options);
  const program = ts.createProgram({
    rootNames: [...texts.keys()],
    options,
    host: {
      ...host,
      fileExists: (file) => texts.has(file) || host.fileExists(file),
      readFile: (file) => texts.get(file) ?? host.readFile(file),
      getSourceFile: (file, version, ...rest) => {
        const text = texts.get(file);
        return text === undefined
          ? host.getSourceFile(file, version, ...rest)
          : ts.createSourceFile(file, text, version);
      },
    },
  });
  return new Map(
    blocks.map((block) => {
      const source = program.getSourceFile(moduleOf(block));
      const diagnostics = [
        ...program.getSyntacticDiagnostics(source),
        ...program.getSemanticDiagnostics(source),
      ];
      return [block, diagnostics.map((diagnostic) => described(block, diagnostic))];
    }),
  );
}

function compilerOptions(): ts.CompilerOptions {
  const { config } = ts.readConfigFile("tsconfig.json", (file) => ts.sys.readFile(file)) as {
    config: unknown;
  };
  return {
    ...ts.parseJsonConfigFileContent(config, ts.sys, process.cwd()).options,
    // An example shows a result without using it any further, and nobody imports it.
    noUnusedLocals: false,
    noUnusedParameters: false,
    declaration: false,
    isolatedDeclarations: false,
  };
}

function moduleOf(block: CodeBlock): string {
  return resolve(`${block.file}.${block.line}.ts`);
}

/** The code pushed down to the line where it stands, so that errors name that line. */
function atItsLine(block: CodeBlock): string {
  return "\n".repeat(block.line - 1) + block.code;
}

function described(block: CodeBlock, diagnostic: ts.Diagnostic): string {
  const { file, start = 0, messageText } = diagnostic;
  const line = file === undefined ? 0 : file.getLineAndCharacterOfPosition(start).line;
  return `${block.file}:${line + 1}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`;
}
