import tseslint from "typescript-eslint";

export default tseslint.config({ ignores: ["dist", "coverage", "docs/api", "demo"] }, tseslint.configs.strictTypeChecked, {
  languageOptions: { parserOptions: { projectService: true } },
});
