import type { CodegenConfig } from "@graphql-codegen/cli";

const types = {
  useTypeImports: true,
  enumsAsTypes: true,
  immutableTypes: true,
  strictScalars: true,
  importExtension: ".ts" as const,
  scalars: {
    ID: { input: "string", output: "string" },
    Change: "\\#server/domain/change.ts#Change",
    FormFields: "\\#server/domain/proposals/form/form-fields.ts#FormFields",
    // The backslash keeps the first # part of the path.
    Report: "\\#server/domain/report.ts#Report",
    Weighing: "\\#server/domain/weighing/weighing.ts#Weighing",
    WeighingWords: "\\#server/domain/weighing/weighing-words.ts#WeighingWords",
  },
};

/** Writes `X.graphql.ts` beside each `X.graphql`, typed by the printed schema. */
const config: CodegenConfig = {
  schema: "server/api/schema.graphql",
  documents: "web/**/*.graphql",
  generates: {
    "web/shared/apollo/schema-types.graphql.ts": { plugins: ["typescript"], config: types },
    "web/": {
      preset: "near-operation-file",
      presetConfig: { extension: ".graphql.ts", baseTypesPath: "shared/apollo/schema-types.graphql.ts" },
      plugins: ["typescript-operations", "typed-document-node"],
      config: types,
    },
  },
};

export default config;
