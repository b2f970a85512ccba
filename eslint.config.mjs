import js from "@eslint/js";
import * as regexp from "eslint-plugin-regexp";
import tseslint from "typescript-eslint";

const all = ["length", "chart", "fit", "fabric", "project", "sheet", "practice"];
/** What each room of the engine may import besides itself, src/problem and src/words. */
const mayImport = {
  length: [],
  chart: ["length"],
  fit: ["chart", "length"],
  fabric: ["chart", "length"],
  project: ["fabric", "fit", "chart", "length"],
  sheet: ["project", "fabric", "fit", "chart", "length"],
};
const outside = ["**/functions/**", "**/taskpane/**", "node:*"];
const forbid = (patterns) => ({
  "no-restricted-imports": [
    "error",
    { patterns: patterns.map((group) => ({ group: [group], message: "Against the direction of imports." })) },
  ],
});
const noClock = [
  { selector: "MemberExpression[object.name='Math'][property.name='random']", message: "No random without a seed." },
  { selector: "NewExpression[callee.name='Date']", message: "The engine has no clock." },
  { selector: "MemberExpression[object.name='Date']", message: "The engine has no clock." },
  { selector: "MemberExpression[object.name='performance']", message: "The engine has no clock." },
];
/** What a person pastes or types is shown as text; these would make it part of the page. */
const asHtml = [
  "innerHTML", "outerHTML", "insertAdjacentHTML", "createContextualFragment", "setHTML", "setHTMLUnsafe",
  "parseHTMLUnsafe", "srcdoc",
]; // prettier-ignore
const NEVER_RENDERED = "Nothing pasted is ever rendered: make elements and text nodes with taskpane/dom.ts.";
const noHtml = [
  ...asHtml.flatMap((name) => [
    { selector: `MemberExpression[property.name='${name}']`, message: NEVER_RENDERED },
    { selector: `MemberExpression[property.value='${name}']`, message: NEVER_RENDERED },
    { selector: `AssignmentExpression Property[key.name='${name}']`, message: NEVER_RENDERED },
    { selector: `CallExpression Property[key.name='${name}']`, message: NEVER_RENDERED },
  ]),
  { selector: "MemberExpression[object.name='document'][property.name=/^write(?:ln)?$/]", message: NEVER_RENDERED },
  {
    selector: "MemberExpression[object.property.name='document'][property.name=/^write(?:ln)?$/]",
    message: NEVER_RENDERED,
  },
  { selector: "Identifier[name='DOMParser']", message: NEVER_RENDERED },
];

export default tseslint.config(
  { ignores: ["dist", "coverage", "node_modules", ".cache", "screenshots", "reports", ".stryker-tmp"] },
  js.configs.recommended,
  ...tseslint.configs.strict,
  regexp.configs["flat/recommended"],
  {
    files: ["**/*.{ts,mjs,js}"],
    rules: {
      "regexp/no-super-linear-backtracking": "error",
      "regexp/no-super-linear-move": "error",
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
      "no-restricted-exports": ["error", { restrictDefaultExports: { direct: true } }],
    },
  },
  {
    files: ["*.config.{ts,mjs}", "**/*.mjs"],
    rules: { "no-restricted-exports": "off" },
    languageOptions: {
      globals: {
        process: "readonly",
        console: "readonly",
        URL: "readonly",
        Buffer: "readonly",
        performance: "readonly",
        setTimeout: "readonly",
        fetch: "readonly",
      },
    },
  },
  {
    files: ["src/**/*.ts"],
    ignores: ["src/practice/**"],
    rules: { "no-restricted-syntax": ["error", ...noClock], ...forbid(outside) },
  },
  ...Object.entries(mayImport).map(([room, allowed]) => ({
    files: [`src/${room}/**/*.ts`],
    rules: forbid([
      ...outside,
      "**/index",
      ...all.filter((other) => other !== room && !allowed.includes(other)).map((other) => `**/${other}/**`),
    ]),
  })),
  {
    files: ["src/problem.ts", "src/words.ts", "src/words/**/*.ts"],
    rules: forbid([...outside, ...all.map((room) => `**/${room}/**`)]),
  },
  {
    files: ["functions/**/*.ts", "taskpane/**/*.ts"],
    rules: forbid(["**/src/*/**", "**/src/problem*", "**/src/words*", "node:*"]),
  },
  { files: ["taskpane/**/*.ts"], rules: { "no-restricted-syntax": ["error", ...noHtml] } },
  { files: ["src/practice/**/*.ts"], rules: forbid(["**/functions/**", "**/taskpane/**"]) },
  // The generator of functions.json knows only any[][] for a range of cells.
  {
    files: ["functions/**/*.ts", "tests/**/*.ts", "src/practice/**"],
    rules: { "@typescript-eslint/no-explicit-any": "off" },
  },
);
