import ts from "typescript";

/** Words in a row make a sentence, or a part of one. */
const sentence = /\p{L}{2,} \p{L}+ \p{L}+/u;

/**
 * Properties whose words are no sentence of a result: what an error needs, where a figure is from.
 */
const otherProperties: ReadonlySet<string> = new Set(["need", "error", "source", "status", "name"]);

/** Functions that refuse: their words end as the need of an error. */
const refuses = /^(?:require|refuse|need)/;

/** Sentences of results that a source file holds itself instead of in its words.ts. */
export function sentencesIn(file: string, text: string): readonly string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isElsewhere(node)) return;
    const words = wordsOf(node);
    if (words !== undefined && sentence.test(words)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      found.push(`${file}:${line + 1}: ${words}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function wordsOf(node: ts.Node): string | undefined {
  if (ts.isStringLiteralLike(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return undefined;
  return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join("…");
}

/** Whether what stands here is the need of an error, a source, or a type. */
function isElsewhere(node: ts.Node): boolean {
  if (ts.isNewExpression(node)) return node.expression.getText() === "GeometryError";
  if (ts.isCallExpression(node)) return refuses.test(node.expression.getText());
  if (ts.isPropertyAssignment(node)) return otherProperties.has(node.name.getText());
  if (ts.isVariableDeclaration(node)) return refuses.test(node.name.getText());
  return ts.isTypeNode(node);
}
