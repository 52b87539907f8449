import { readFileSync } from "node:fs";
import { isBuiltin } from "node:module";
import { join } from "node:path";
import { runInThisContext } from "node:vm";
import ts from "typescript";
import type { CodeBlock } from "./code-blocks.js";
import { claim, type Expectation, expectationOf, mismatch } from "./expectation.js";

/** A statement of a block and what the comment behind it claims. */
interface CheckedStatement {
  readonly statement: ts.Statement;
  readonly line: number;
  readonly expectation: Expectation;
}

interface Edit {
  readonly at: number;
  readonly text: string;
}

/** How the instrumented code of a block reports to the runner. */
interface Probe {
  readonly value: (index: number, value: unknown) => unknown;
  readonly throws: (index: number, run: () => Promise<void>) => Promise<void>;
}

type Runnable = (
  require: (specifier: string) => unknown,
  exports: object,
  probe: Probe,
) => Promise<void>;

/** Where a block finds the library: the modules by their names, and the files that come with it. */
export interface Installed {
  readonly load: (specifier: string) => Promise<object>;
  readonly files: string;
}

/** The library as it stands here. */
const HERE: Installed = {
  load: (name) => import(/* @vite-ignore */ name) as Promise<object>,
  files: ".",
};

/** As a reader's own project has it. */
const IN_PROJECT = /^node_modules\/brow-geometry\//;

/**
 * Runs a block of code as a reader would, and checks what its comments claim: `// → value` behind
 * an expression, a `console.log` or a declaration; `// throws Name: text` behind any statement.
 * Resolves to the number of claims that held.
 */
export async function runBlock(block: CodeBlock, installed: Installed = HERE): Promise<number> {
  const source = ts.createSourceFile(block.file, block.code, ts.ScriptTarget.ES2022, true);
  const checked = checkedStatements(block, source);
  const modules = await importedModules(block, installed);
  const held = new Set<number>();
  const fail = (index: number, message: string): never => {
    throw new Error(`${block.file}:${checked[index]?.line ?? block.line}: ${message}`);
  };
  const probe: Probe = {
    value(index, value) {
      const expectation = checked[index]?.expectation;
      if (expectation?.kind !== "value") return fail(index, "no value is expected here");
      const wrong = mismatch(value, expectation.value);
      if (wrong !== undefined) fail(index, wrong);
      held.add(index);
      return value;
    },
    async throws(index, run) {
      const expectation = checked[index]?.expectation;
      if (expectation?.kind !== "throws") return fail(index, "no error is expected here");
      const thrown = await run().then(
        () => undefined,
        (error: unknown) => error,
      );
      const wrong = errorMismatch(thrown, expectation);
      if (wrong !== undefined) fail(index, wrong);
      held.add(index);
    },
  };
  const run = compiled(block, checked);
  await run((specifier) => modules.get(specifier), {}, probe);
  return held.size;
}

function checkedStatements(block: CodeBlock, source: ts.SourceFile): readonly CheckedStatement[] {
  const { statements, text } = source;
  const checked = statements.flatMap((statement, index): readonly CheckedStatement[] => {
    const comments = text.slice(statement.end, statements[index + 1]?.getStart() ?? text.length);
    const line = block.line + source.getLineAndCharacterOfPosition(statement.getStart()).line;
    const expectation = at(block.file, line, () => expectationOf(comments));
    return expectation === undefined ? [] : [{ statement, line, expectation }];
  });
  const claims = text.split("\n").filter((line) => claim.test(line)).length;
  if (claims !== checked.length) {
    const found = `${claims} results are claimed, ${checked.length} of them behind a statement of the top level`;
    throw new Error(`${block.file}:${block.line}: ${found}`);
  }
  return checked;
}

function compiled(block: CodeBlock, checked: readonly CheckedStatement[]): Runnable {
  const edits = checked.flatMap(({ statement, line, expectation }, index) =>
    at(block.file, line, (): readonly Edit[] => {
      if (expectation.kind === "throws") {
        return [
          { at: statement.getStart(), text: `await probe.throws(${index}, async () => {` },
          { at: statement.end, text: "});" },
        ];
      }
      const expression = expressionOf(statement);
      return [
        { at: expression.getStart(), text: `probe.value(${index}, (` },
        { at: expression.end, text: "))" },
      ];
    }),
  );
  const { outputText } = ts.transpileModule(withEdits(block.code, edits), {
    compilerOptions: {
      module: ts.ModuleKind.CommonJS,
      target: ts.ScriptTarget.ES2022,
      esModuleInterop: true,
    },
  });
  return runInThisContext(`(async (require, exports, probe) => {${outputText}\n})`, {
    filename: `${block.file}:${block.line}`,
  }) as Runnable;
}

function withEdits(code: string, edits: readonly Edit[]): string {
  return edits.reduceRight(
    (text, edit) => text.slice(0, edit.at) + edit.text + text.slice(edit.at),
    code,
  );
}

/** The expression whose value a comment behind the statement tells. */
function expressionOf(statement: ts.Statement): ts.Expression {
  if (ts.isExpressionStatement(statement)) {
    const { expression } = statement;
    const printed =
      ts.isCallExpression(expression) && expression.expression.getText() === "console.log"
        ? expression.arguments[0]
        : undefined;
    return printed ?? expression;
  }
  if (ts.isVariableStatement(statement)) {
    const [declaration, ...others] = statement.declarationList.declarations;
    if (declaration?.initializer !== undefined && others.length === 0) {
      return declaration.initializer;
    }
  }
  throw new Error("only an expression or the declaration of one name has a value to check");
}

async function importedModules(
  block: CodeBlock,
  { load, files }: Installed,
): Promise<ReadonlyMap<string, unknown>> {
  const modules = new Map<string, unknown>();
  for (const { fileName } of ts.preProcessFile(block.code).importedFiles) {
    if (!/^[\w@]/.test(fileName)) {
      throw new Error(`${block.file}:${block.line}: a reader has no file ${fileName}`);
    }
    const exports = await load(fileName);
    // Marked as an ES module, so that a default import finds the default export.
    modules.set(fileName, isBuiltin(fileName) ? exports : { ...exports, __esModule: true });
    if (fileName === "node:fs")
      modules.set(fileName, { ...exports, readFileSync: fromFiles(files) });
  }
  return modules;
}

/** Reads a file of the library where it is installed, and any other where it is. */
function fromFiles(files: string): (path: string, encoding: BufferEncoding) => string {
  return (path, encoding) =>
    readFileSync(
      IN_PROJECT.test(path) ? join(files, path.replace(IN_PROJECT, "")) : path,
      encoding,
    );
}

function errorMismatch(
  thrown: unknown,
  expected: Expectation & { kind: "throws" },
): string | undefined {
  if (!(thrown instanceof Error)) return `nothing is thrown, expected ${expected.name}`;
  if (thrown.name !== expected.name) {
    return `${thrown.name} is thrown ("${thrown.message}"), expected ${expected.name}`;
  }
  if (thrown.message.includes(expected.text)) return undefined;
  return `the error says "${thrown.message}", expected "${expected.text}"`;
}

function at<Result>(file: string, line: number, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    throw new Error(`${file}:${line}: ${(error as Error).message}`, { cause: error });
  }
}
