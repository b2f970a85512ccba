import { defineConfig } from "vitest/config";

/** Everything; or, where all of it has just passed and was built once more, what looks at the build. */
const include = process.env["JUST_TESTED"]
  ? ["tests/{build,acceptance}/**/*.test.ts", "tests/readme.test.ts"]
  : ["tests/**/*.test.ts"];

export default defineConfig({
  test: {
    include,
    exclude: ["tests/browser/**"],
    environment: "node",
    testTimeout: 20_000,
    coverage: { reporter: ["text-summary", "json-summary"], include: ["src/**/*.ts"], exclude: ["src/practice/**"] },
  },
});
