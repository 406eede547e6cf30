import { defineConfig } from "vitest/config";

const shared = { exclude: ["**/node_modules/**", "**/.next/**", "**/generated/**"] };

export default defineConfig({
  test: {
    projects: [
      {
        // As apps/web/tsconfig.json has it.
        resolve: { alias: [{ find: /^@\//, replacement: `${import.meta.dirname}/apps/web/src/` }] },
        test: {
          ...shared,
          name: "unit",
          // They share nothing that one could change for another; a process for each file would cost half the time.
          isolate: false,
          // Searches and properties take their time on a busy machine.
          testTimeout: 30_000,
          include: [
            "packages/**/src/**/*.test.ts",
            "apps/**/src/**/*.test.ts",
            "scripts/**/*.test.ts",
            "prisma/demo/**/*.test.ts",
            "tests/published/**/*.test.ts",
            "tests/bench/**/*.test.ts",
          ],
          exclude: [...shared.exclude, "**/*.database.test.ts"],
        },
      },
      {
        test: {
          ...shared,
          name: "database",
          // Every file has a database of its own; modules are read once for all of them.
          isolate: false,
          include: ["packages/**/*.database.test.ts", "prisma/demo/**/*.database.test.ts"],
          globalSetup: [
            "packages/database/src/testing/global-setup.ts",
            "packages/workshop/src/testing/demo-template.ts",
          ],
          testTimeout: 20_000,
          hookTimeout: 60_000,
          maxWorkers: 2,
        },
      },
      {
        // The real start script, killed and broken on purpose; one at a time, on the production build.
        test: {
          ...shared,
          name: "faults",
          include: ["tests/faults/**/*.test.ts"],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          maxWorkers: 1,
          fileParallelism: false,
        },
      },
    ],
  },
});
