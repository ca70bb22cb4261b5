import coreWebVitals from "eslint-config-next/core-web-vitals";
import typescript from "eslint-config-next/typescript";
import prettier from "eslint-config-prettier";

/** Rules about components and hooks, for which the React compiler reads a whole file. */
const ABOUT_COMPONENTS = /^(react|react-hooks|jsx-a11y)\//;
const componentRules = coreWebVitals
  .flatMap(({ rules = {} }) => Object.keys(rules))
  .filter((rule) => ABOUT_COMPONENTS.test(rule));

const config = [
  { ignores: [".next/", "dist/", "src/generated/", "test/architecture/violations/", "next-env.d.ts", "test-results/"] },
  ...coreWebVitals,
  ...typescript,
  {
    files: ["**/*.ts", "**/*.tsx"],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      "@typescript-eslint/await-thenable": "error",
      "@typescript-eslint/consistent-type-assertions": [
        "error",
        { assertionStyle: "as", objectLiteralTypeAssertions: "allow" },
      ],
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": ["error", { checksVoidReturn: { attributes: false } }],
      "@typescript-eslint/no-non-null-assertion": "error",
      "@typescript-eslint/no-unnecessary-type-assertion": "error",
      "@typescript-eslint/only-throw-error": "error",
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
      "max-lines": ["error", { max: 250 }],
      "no-warning-comments": ["error", { terms: ["todo", "fixme", "xxx"] }],
    },
  },
  {
    files: ["**/*.ts"],
    ignores: ["src/features/**", "src/ui/**"],
    rules: Object.fromEntries(componentRules.map((rule) => [rule, "off"])),
  },
  { files: ["**/*.cjs"], rules: { "@typescript-eslint/no-require-imports": "off" } },
  prettier,
];

export default config;
