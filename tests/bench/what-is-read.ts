import type { Claim } from "#server/domain/claim.ts";
import type { Examination } from "#server/domain/examination.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import { randomSource } from "#server/generator/random-source.ts";
import type { Store } from "#server/ports/store.ts";

/** Variables of the operations of the web client, a set for each number. */
export type Asked = readonly (readonly [
  operation: string,
  variables: (n: number) => Readonly<Record<string, unknown>>,
])[];

const PIECES = 40;

/**
 * What the pages ask of a store, as of somebody who looks up what was seen on pieces: terms that examinations name, claims
 * about them, regions large and small.
 */
export async function whatIsRead(store: Store): Promise<Asked> {
  const random = randomSource(11);
  const { rows: pieces } = await store.listExaminations({ first: PIECES });
  const features = await termsOf(store, "feature", pieces);
  const claims: Claim[] = [];
  for (const { id } of features) claims.push(...(await store.listClaims({ subject: id }, { first: 5 })).rows);
  const sources = claims.flatMap(({ citations }) =>
    citations.flatMap((citation) => (citation.basis === "published" ? [citation.source] : [])),
  );
  const page = async (kind: TermKind) => (await store.listTerms({ kinds: [kind] }, { first: 200 })).rows;
  const regions = await page("region");
  const forms = await page("form");
  const parts = await page("part");
  const newest = (await store.newestRevision())?.number ?? 0;
  const at = <Row>(rows: readonly Row[], n: number): Row => rows[(n * 7) % rows.length] as Row;
  const word = (n: number): string => {
    const { label } = at(features, n);
    const gap = random.below(label.length);
    return [
      label,
      label.slice(0, 1 + random.below(label.length)),
      label.slice(0, gap) + label.slice(gap + 1),
    ][n % 3] as string;
  };
  const from = (n: number) => 1600 + ((n * 37) % 300);
  const piece = (n: number) => inputOf(at(pieces, n).piece);
  const none = () => ({});
  return [
    ["ExaminePiece", (n) => ({ piece: piece(n) })],
    ["AllSources", (n) => ({ first: 200, ...(n % 2 === 0 ? {} : { after: at(sources, n) }) })],
    [
      "AroundPage",
      (n) => ({ id: at([...features, ...parts, ...regions], n).id, steps: 1 + (n % 2), each: 8 }),
    ],
    ["ClaimPage", (n) => ({ id: at(claims, n).id })],
    [
      "DisagreementRulePage",
      (n) => ({
        rule: ["rivals", "one-source", "attested-before-introduced"][n % 3],
        first: 20,
      }),
    ],
    ["DisagreementsPage", none],
    [
      "EvidenceSearch",
      (n) => ({
        words: n % 8 === 1 ? "" : word(n),
        first: 40,
        ...[
          {},
          { region: at(regions, n).id, from: from(n), to: from(n) + 50 },
          {},
          { part: at(parts, n).id },
          {},
          { from: from(n), to: from(n) + 20 },
          {},
          { region: at(regions, n).id },
        ][n % 8],
      }),
    ],
    ["EvidenceCounts", none],
    ["FilterChoices", (n) => ({ kinds: [["PART"], ["REGION"]][n % 2], first: 200 })],
    ["EveryTerm", (n) => ({ kind: ["PART", "REGION"][n % 2], first: 200 })],
    ["FeaturesOnPart", (n) => ({ id: at(parts, n).id })],
    ["SourceList", (n) => ({ first: 50, ...(n % 2 === 0 ? {} : { after: at(sources, n) }) })],
    ["SourcePage", (n) => ({ id: at(sources, n), first: 50 })],
    ["TermPage", (n) => ({ id: at([...features, ...parts, ...regions], n).id, first: 50 })],
    ["TermTree", (n) => ({ kinds: [["FEATURE"], ["FORM"], ["TOOL", "MATERIAL"]][n % 3], first: 200 })],
    ["History", (n) => ({ id: at(features, n).id, first: 10 })],
    ["OldReading", (n) => ({ id: at(features, n).id, revision: newest })],
    ["ChangedSince", (n) => ({ id: at(features, n).id, revision: Math.max(1, newest - 1) })],
    ["Leaning", (n) => ({ id: at(claims, n).id })],
    ["ExaminationPage", (n) => ({ id: at(pieces, n).id })],
    ["FeaturesOfPart", (n) => ({ id: at(parts, n).id })],
    ["FirstFeatures", firstOf(40)],
    ["TermSearch", (n) => ({ words: word(n), kinds: ["FEATURE"] })],
    ["FindForms", (n) => ({ words: at(forms, n).label.slice(0, 4) })],
    ["FindRegions", (n) => ({ words: at(regions, n).label.slice(0, 4) })],
    ["PieceOnPlan", (n) => ({ id: at(pieces, n).id })],
    [
      "InspectionPlan",
      (n) => ({
        form: at(forms, n).id,
        region: at(regions, n).id,
        date: "1750",
        examined: 2026,
      }),
    ],
    ["FieldSheet", (n) => ({ form: at(forms, n).id, region: at(regions, n).id, date: "1750", each: 5 })],
    ["SheetForms", firstOf(200)],
    ["CompareRegions", (n) => ({ of: [at(regions, n).id, at(regions, n + 1).id] })],
    ["RegionPage", (n) => ({ id: at(regions, n).id })],
    ["RegionCounts", none],
    ["AsOfRevision", () => ({ asked: newest, isAsked: true })],
    ["PieceStrips", (n) => ({ id: at(pieces, n).id })],
    ["StartPage", firstOf(20)],
    ["WeighPiece", (n) => ({ piece: piece(n), stages: ["DATES", "LOOKS"], toLookFor: true })],
  ];
}

const firstOf = (first: number) => () => ({ first });

async function termsOf(
  store: Store,
  kind: TermKind,
  pieces: readonly Examination[],
): Promise<readonly Term[]> {
  const named = pieces.flatMap(({ piece }) => piece.observations.map(({ feature }) => feature));
  return [...(await store.terms([...new Set(named)])).values()].filter((term) => term.kind === kind);
}

/** A piece as it is sent: enums are in capitals. */
function inputOf(piece: Examination["piece"]): object {
  const capitals = (value: string): string => value.toUpperCase().replaceAll(" ", "_");
  return {
    ...piece,
    observations: piece.observations.map(({ sureness, seen, ...rest }) => ({
      ...rest,
      ...(sureness === undefined ? {} : { sureness: capitals(sureness) }),
      seen: capitals(seen),
    })),
  };
}
