import js from "@eslint/js";
import { defineConfig } from "eslint/config";
import tseslint from "typescript-eslint";

const matrices = "/^(vec[234]|mat[234]|mat2d|quat2?)$/";
/** Functions of gl-matrix that make a value or answer with one; the others write into their first argument. */
const makersAndReaders =
  "/^(create|clone|from.*|angle|dist|distance|determinant|dot|equals|exactEquals|frob|getAngle|len|length|sqrDist|sqrLen|squaredDistance|squaredLength|str)$/";

const freshOut = `:matches(
  [arguments.0.type=/^(ArrayExpression|CallExpression)$/],
  [arguments.0.type="Identifier"][arguments.0.name="out"]
)`.replaceAll(/\s+/g, " ");

const sourceSyntax = [
  {
    selector: "ExportAllDeclaration",
    message: "List the names: the public surface is read in the index file.",
  },
  {
    selector: "ClassDeclaration[id.name!='GeometryError'], ClassExpression",
    message: "Plain readonly data and functions; GeometryError is the only class.",
  },
  {
    selector: `CallExpression[callee.object.name=${matrices}][callee.property.name=/^(create|clone|from)/]:not(${freshOut})`,
    message: "This makes a Float32Array and loses half of the digits; write a plain pair.",
  },
  {
    selector: `CallExpression[callee.object.name=${matrices}][callee.property.name!=${makersAndReaders}]:not(${freshOut})`,
    message:
      "gl-matrix writes into its first argument: give it a fresh pair, or a local one named out.",
  },
  {
    selector: ":function > Identifier.params[name='out']",
    message: "A pair named out is fresh and local: gl-matrix writes into it.",
  },
  {
    selector: "MemberExpression[property.name='setMatrixArrayType']",
    message: "It changes a setting for every user of gl-matrix in the process.",
  },
];

const zod = { group: ["zod", "zod/*"], message: "zod stays in src/schema, its own entry point." };
const glMatrix = {
  group: ["gl-matrix", "gl-matrix/*"],
  message: "gl-matrix stays in src/geometry, imported by name from its root.",
};
const glMatrixParts = { ...glMatrix, group: ["gl-matrix/*"] };

export default defineConfig(
  // The page in examples has packages, a compiler's and a linter's configuration of its own.
  { ignores: ["dist", "coverage", "docs/api", "demo", "examples/studio-page"] },
  js.configs.recommended,
  tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true } },
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      eqeqeq: "error",
      "@typescript-eslint/consistent-type-imports": "error",
      // Leaving a property out is what destructuring beside a rest is for.
      "@typescript-eslint/no-unused-vars": ["error", { ignoreRestSiblings: true }],
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      // `${count} points` reads better than `${String(count)} points`, and a number has one way to print.
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      // `each((x) => push(x))` hides nothing.
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      // A length is a number with a tag; its opposite is a plain number, as the type says.
      "@typescript-eslint/no-unsafe-unary-minus": "off",
      // `mm` and `px` keep one overload a shape, so that the reader sees the table of what they take.
      "@typescript-eslint/unified-signatures": "off",
    },
  },
  {
    files: ["src/**"],
    rules: {
      "no-restricted-syntax": ["error", ...sourceSyntax],
      "no-restricted-imports": ["error", { patterns: [zod, glMatrix] }],
    },
  },
  {
    files: ["src/geometry/**"],
    rules: { "no-restricted-imports": ["error", { patterns: [zod, glMatrixParts] }] },
  },
  {
    files: ["src/schema/**"],
    rules: { "no-restricted-imports": ["error", { patterns: [glMatrix] }] },
  },
  {
    files: ["src/**"],
    ignores: ["src/cli/**"],
    rules: {
      // No I/O, no clock, no randomness: the same data in gives the same data out.
      "no-restricted-globals": [
        "error",
        "Date",
        "console",
        "process",
        "Buffer",
        "fetch",
        "performance",
      ],
      "no-restricted-properties": ["error", { object: "Math", property: "random" }],
    },
  },
  {
    files: ["**/*.d.ts"],
    // They describe what a package is, not what it should be.
    rules: { "@typescript-eslint/no-extraneous-class": "off" },
  },
  {
    files: ["**/*.js"],
    extends: [tseslint.configs.disableTypeChecked],
    // The compiler knows the globals of each program's platform.
    rules: { "no-undef": "off" },
  },
);
