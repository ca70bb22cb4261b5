import coreWebVitals from "eslint-config-next/core-web-vitals";
import typescript from "eslint-config-next/typescript";
import prettier from "eslint-config-prettier";

// These compile every file with React's compiler, which takes a third of all linting.
const REACT_RULES = coreWebVitals.flatMap(({ plugins }) => Object.keys(plugins?.["react-hooks"]?.rules ?? {}));

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
    // No components and no hooks.
    files: ["src/{cli,engine,server,solver,start,worker}/**/*.ts", "{docs,e2e,prisma,test}/**/*.ts", "*.ts"],
    rules: Object.fromEntries(REACT_RULES.map((rule) => [`react-hooks/${rule}`, "off"])),
  },
  { files: ["**/*.cjs"], rules: { "@typescript-eslint/no-require-imports": "off" } },
  prettier,
];

export default config;
