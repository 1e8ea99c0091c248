import type { Finding, Path } from "#server/domain/report.ts";

/** Of a finding that says something the paths that make it so; of a silent one all that are meant for the place. */
export const pathsToWalk = ({ label, hardness, paths }: Finding): readonly Path[] =>
  paths.filter((path) =>
    label === "silent" ? path.reason !== "out-of-scope" : path.label === label && path.hardness === hardness,
  );
