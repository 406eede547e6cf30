/** Who may import whom. The reasons are in each rule's comment; the picture is in DEVELOPERS.md. */
const calculations = "(units|engineering|pricing|planning|prerequisites|compliance)";

module.exports = {
  forbidden: [
    {
      name: "no-circular",
      severity: "error",
      comment: "A cycle means two things are one thing, or one concept is missing.",
      from: {},
      to: { circular: true },
    },
    {
      name: "pure-stays-pure",
      severity: "error",
      comment:
        "A calculation must be checkable against its source with no database, clock or network. Move the I/O to a use case.",
      from: {
        path: `^packages/${calculations}/src/`,
        pathNot: ["[.]test[.]ts$", "^packages/(planning|prerequisites)/src/(solver|testing|worker)/"],
      },
      to: { pathNot: `^packages/${calculations}/src/` },
    },
    {
      name: "search-is-handed-in",
      severity: "error",
      comment:
        "The solver's worker and its clock stay behind the entry of their own; the calculation takes a search as a parameter.",
      from: {
        path: "^packages/prerequisites/src/",
        pathNot: ["[.]test[.]ts$", "^packages/prerequisites/src/(solver|testing)/"],
      },
      to: { path: "^packages/prerequisites/src/solver/" },
    },
    {
      name: "solver-imports-its-solver-only",
      severity: "error",
      comment: "The entry of the solver may import the one registry package it is named for.",
      from: { path: "^packages/prerequisites/src/solver/", pathNot: "[.]test[.]ts$" },
      to: { pathNot: "^(packages/prerequisites/src/|(node_modules/)?clingo-wasm)" },
    },
    {
      name: "units-import-nothing",
      severity: "error",
      comment: "units is the ground floor.",
      from: { path: "^packages/units/src/", pathNot: "[.]test[.]ts$" },
      to: { pathNot: "^packages/units/src/" },
    },
    {
      name: "calculations-do-not-mix",
      severity: "error",
      comment: "Calculation packages know engineering and units only; a use case composes them.",
      from: { path: "^packages/(pricing|prerequisites|planning|compliance|engineering)/src/" },
      to: { path: "^packages/(?!units/|engineering/)([^/]+)/src/", pathNot: "^packages/$1/" },
    },
    {
      name: "contract-knows-calculations-only",
      severity: "error",
      comment: "`npm run calc` must not load a database.",
      from: { path: "^packages/contract/src/" },
      to: { path: "^packages/(database|documents|workshop)/" },
    },
    {
      name: "documents-know-units-only",
      severity: "error",
      comment: "Documents turn plain data into bytes and back; they know nothing of use cases.",
      from: { path: "^packages/documents/src/" },
      to: { path: "^packages/(?!units/|documents/)" },
    },
    {
      name: "database-knows-units-only",
      severity: "error",
      comment: "The database package stores; it knows nothing of use cases.",
      from: { path: "^packages/database/src/" },
      to: { path: "^packages/(?!units/|database/)" },
    },
    {
      name: "only-database-sees-prisma",
      severity: "error",
      comment: "Everything else speaks to the database through packages/database.",
      from: { pathNot: "^packages/database/" },
      to: { path: "(@prisma/|node_modules/prisma/|node_modules/pg/|packages/database/generated)" },
    },
    {
      name: "nothing-imports-an-app",
      severity: "error",
      comment: "Applications are the top of the house.",
      from: { path: "^packages/" },
      to: { path: "^apps/" },
    },
    {
      name: "web-goes-through-use-cases",
      severity: "error",
      comment: "Pages hold no rules and read no tables.",
      from: { path: "^apps/web/" },
      to: { path: "^packages/(?!workshop/|contract/|units/)" },
    },
    {
      name: "no-deep-imports",
      severity: "error",
      comment:
        "A package's index is its promise; database has two more, for set-up and for tests, prerequisites one for its solver, planning one for its thread.",
      from: { path: "^(apps|packages)/([^/]+)/" },
      to: {
        path: "^packages/([^/]+)/src/(?!(setup/|testing/|solver/|worker/)?index[.]ts$)",
        pathNot: "^packages/$2/",
      },
    },
    {
      name: "never-your-own-index",
      severity: "error",
      comment: "Inside a package import the file; the index is for others.",
      from: { path: "^packages/([^/]+)/src/.+" },
      to: { path: "^packages/$1/src/index[.]ts$" },
    },
  ],
  options: {
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    exclude: { path: "([.]next|[.]turbo|next-env[.]d[.]ts|/generated/|[.]buildproof)" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "types", "default"] },
  },
};
