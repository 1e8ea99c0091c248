/** An address of every kind of page, with something on it. */
export const ROUTES: readonly string[] = [
  "/",
  "/pieces/examination.millrace-chest",
  "/evidence",
  "/evidence?words=saw",
  "/evidence?part=part.drawer-bottom&region=region.new-england&from=1760&to=1800",
  "/evidence?kind=TOOL",
  "/evidence?kind=SOURCE",
  "/terms/tool.circular-saw",
  "/terms/material.mahogany",
  "/terms/region.new-england",
  "/claims/claim.A13",
  "/claims/claim.J28",
  "/sources/source.mercer-1923",
  "/method",
  "/revisions",
  "/nowhere",
];
