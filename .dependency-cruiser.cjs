const { join } = require("node:path");

/** Files of features, by the last word of their names. */
const inFeature = (words) => `^src/features/.+(${words})\\.ts$`;
const DATABASE_FILES = inFeature("access|data|mutations");
/** From the innermost: each may use those before it. */
const FEATURES = ["mail", "accounts", "patterns", "calls", "recruiting", "testing", "results"];
const NODE_MODULES = "(^|/)node_modules/";

/** The layers of src/: {app, worker, start} → features → {ui, server, engine}; cli → engine; ui → engine/units. */
const forbidden = [
  {
    name: "no-circles",
    comment: "Files that need each other are one file, or miss a third.",
    from: { path: "^src/" },
    to: { circular: true },
  },
  {
    name: "engine-is-pure",
    comment: "The engine only computes: no clock, no database, no framework, no Node.",
    from: { path: "^src/engine/" },
    to: { pathNot: ["^src/engine/", `${NODE_MODULES}(zod|@stdlib)/`] },
  },
  {
    name: "engine-by-its-faces",
    comment: "A package of the engine is used through its index.ts.",
    from: { path: "^src/", pathNot: "^src/engine/" },
    to: { path: "^src/engine/[^/]+/", pathNot: "^src/engine/[^/]+/index\\.ts$" },
  },
  {
    name: "cli-uses-the-engine",
    comment: "The command line works without database and framework.",
    from: { path: "^src/cli/" },
    to: { path: "^src/", pathNot: "^src/(cli|engine|solver)/" },
  },
  {
    name: "solver-knows-the-engine-only",
    comment: "A solver answers the engine's programs, whoever runs it.",
    from: { path: "^src/solver/" },
    to: { path: "^src/", pathNot: "^src/(solver|engine)/" },
  },
  {
    name: "server-imports-nothing-of-ours",
    comment: "Plumbing knows no domain.",
    from: { path: "^src/server/" },
    to: { path: "^src/", pathNot: "^src/(server|generated)/" },
  },
  {
    name: "ui-has-no-domain",
    comment: "What is drawn for any product needs no more than lengths.",
    from: { path: "^src/ui/" },
    to: { path: "^src/", pathNot: "^src/(ui|engine/units)/" },
  },
  {
    name: "features-look-inward",
    comment: "A feature is used by routes, the worker and the start; it uses none of them.",
    from: { path: "^src/features/" },
    to: { path: "^src/", pathNot: "^src/(features|ui|server|engine|generated)/" },
  },
  ...FEATURES.slice(0, -1).map((feature, index) => ({
    name: `features-one-way-${feature}`,
    comment: `The features go ${FEATURES.toReversed().join(" → ")}.`,
    from: { path: `^src/features/${feature}/` },
    to: { path: `^src/features/(${FEATURES.slice(index + 1).join("|")})/` },
  })),
  {
    name: "features-are-named",
    comment: "A new feature takes its place among the others.",
    from: { path: "^src/" },
    to: { path: "^src/features/", pathNot: `^src/features/(${FEATURES.join("|")})/` },
  },
  {
    name: "feature-to-feature",
    comment:
      "Of another feature only its proof of access, what it reads, computes and writes, its pages, state and schema.",
    from: { path: "^src/features/([^/]+)/" },
    to: {
      path: "^src/features/",
      pathNot: ["^src/features/$1/", inFeature("access|computed|data|mutations|pages|schema|status|steps|query")],
    },
  },
  {
    name: "writes-from-writes",
    comment: "What changes something is called by actions and by other mutations, never while a page is read.",
    from: { path: "^src/features/", pathNot: "(mutations|actions)\\.ts$" },
    to: { path: "mutations\\.ts$" },
  },
  {
    name: "database-where-access-is-proved",
    comment: "Only a feature's access, data and mutations reach the database, for they carry the proof.",
    from: { path: "^src/", pathNot: [DATABASE_FILES, "^src/(server|generated)/"] },
    to: { path: "^src/(server/database\\.ts$|generated/)" },
  },
  {
    name: "screens-change-nothing-themselves",
    comment: "A component acts through actions, which know the viewer; a route that is sent something is one itself.",
    from: { path: ["^src/app/", "^src/features/.+\\.tsx$"], pathNot: "^src/app/.+/route\\.ts$" },
    to: { path: inFeature("mutations") },
  },
  {
    name: "nobody-imports-routes",
    comment: "Routes are the outermost layer.",
    from: { path: "^src/", pathNot: "^src/app/" },
    to: { path: "^src/app/" },
  },
  {
    name: "nobody-imports-entries",
    comment: "The start, the worker and the command line are run, not imported.",
    from: { path: "^src/", pathNot: "^src/(start|worker|cli)/" },
    to: { path: "^src/(start|worker|cli)/" },
  },
  {
    name: "start-serves-no-domain",
    comment: "The start lays the house; what is in it the features say, by way of the seed.",
    from: { path: "^src/start/" },
    to: { path: "^src/", pathNot: "^src/(start|server)/" },
  },
  {
    name: "src-needs-no-tests",
    comment: "What runs for people does not hang on what runs for us.",
    from: { path: "^src/" },
    to: { path: "^(test|e2e)/" },
  },
  {
    name: "no-development-packages",
    comment:
      "A package that src needs is one of its dependencies; the loader and the benches are for developers alone.",
    from: { path: "^src/", pathNot: ["^src/worker/engine-thread-loader\\.mjs$", "^src/cli/bench/"] },
    to: { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"], pathNot: `${NODE_MODULES}@types/` },
  },
  {
    name: "everything-is-found",
    comment: "An import that leads nowhere.",
    from: { path: "^src/" },
    to: { couldNotResolve: true },
  },
].map((rule) => ({ severity: "error", ...rule }));

module.exports = {
  forbidden,
  options: {
    doNotFollow: { path: ["node_modules", "^src/generated/"] },
    exclude: { path: "\\.css$" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: join(__dirname, "tsconfig.json") },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
    },
  },
};
