import type { Report, RuleOut } from "#server/domain/report.ts";
import type { PartDates, YearOdds } from "#server/domain/weighing/dates.ts";
import type { Mends } from "#server/domain/weighing/mends.ts";
import type { RivalKind } from "#server/domain/weighing/rivals.ts";
import type { Weighing } from "#server/domain/weighing/weighing.ts";
import type { Expected } from "./expected.ts";

/** What was answered of a piece. */
export interface Answered {
  readonly report: Report;
  readonly weighing: Weighing;
  /** The conclusion in words. */
  readonly headline: string;
}

const STATES = ["original", "later", "reused", "reworked"] as const;
/** Stories closer than this, as a factor of odds, are not told apart. */
const HALF_A_DECADE = 10 ** 0.5;

/** Where an answer differs from what an expert would say; empty if nowhere. */
export function judge(expected: Expected, { report, weighing, headline }: Answered): readonly string[] {
  const complaints: string[] = [];
  const same = (what: string, found: unknown, wanted: unknown): void => {
    if (JSON.stringify(found) !== JSON.stringify(wanted))
      complaints.push(`${what}: ${JSON.stringify(found)}, not ${JSON.stringify(wanted)}`);
  };
  const each = <T>(wanted: Readonly<Record<string, T>> = {}, tell: (key: string, value: T) => void): void => {
    for (const [key, value] of Object.entries(wanted)) tell(key, value);
  };
  const partOf = (id: string): PartDates => {
    const found = weighing.dates?.parts.find(({ parts }) => parts.some((part) => part === id));
    if (found === undefined) throw new Error(`there is no part ${id}`);
    return found;
  };

  same("headline", wordOf(headline), expected.headline);
  each(expected.findings, (id, wanted) => same(`finding ${id}`, findingIn(report, id), wanted));
  for (const hardness of ["physical", "practice"] as const)
    same(`ruled out (${hardness})`, ruledOutIn(report, hardness), [...expected.ruledOut[hardness]].sort());
  each(expected.signs, (claim, wanted) => same(`sign ${claim}`, signIn(report, claim), wanted));
  each(expected.wouldVoid, (claim, wanted) => {
    const left = [...report.signs, ...report.findings].flatMap(({ voidIf }) => voidIf);
    const found = left.filter((one) => one.claim === claim).map(({ condition }) => String(condition));
    if (!found.includes(wanted)) complaints.push(`${claim} would be void: ${found}, not ${wanted}`);
  });
  const isOf = (what: string, odds: PartDates["odds"], wanted: string): void => {
    if (!wanted.split(" or ").includes(likeliest(odds))) same(what, likeliest(odds), wanted);
  };
  each(expected.states, (id, wanted) => isOf(`state of ${id}`, partOf(id).odds, wanted));
  each(expected.statesIfClaimed, (id, wanted) =>
    isOf(`state of ${id} if as claimed`, partOf(id).ifAsClaimed, wanted),
  );
  each(expected.made, (id, year) => {
    if (!covers(partOf(id).made, year)) complaints.push(`${id} was not made in ${year}`);
  });
  each(expected.worked, (id, year) => {
    const { worked } = partOf(id);
    if (worked === undefined || !covers(worked, year))
      complaints.push(`${id} was not worked over in ${year}`);
  });
  for (const level of ["possible", "usual"] as const)
    each(expected.mends?.[level], (id, wanted) =>
      same(`mend of ${id} (${level})`, cheapest(weighing.mends?.[level], id), wanted),
    );
  if (expected.origins) {
    same("origins", weighing.origins?.possible.atLeast, expected.origins.atLeast);
    for (const pair of expected.origins.apart ?? [])
      if (
        !weighing.origins?.possible.alwaysApart.some((apart) =>
          pair.every((id) => apart.some((one) => one === id)),
        )
      )
        complaints.push(`${pair.join(" and ")} can share an origin`);
  }
  for (const [better, worse] of expected.ahead ?? [])
    if (!(among(weighing, better) > among(weighing, worse)))
      complaints.push(
        `${better} (${among(weighing, better)}) is not ahead of ${worse} (${among(weighing, worse)})`,
      );
  if (expected.verdict !== "at odds") complaints.push(...condemned(expected, { report, weighing, headline }));
  return complaints;
}

/** Where an answer condemns a piece that is honest, or of which nothing can be told. */
function condemned(
  { ownedUp = [], outdone }: Expected,
  { report, weighing, headline }: Answered,
): readonly string[] {
  const complaints: string[] = [];
  const possible = ruledOutIn(report, "physical");
  if (possible.length > 0) complaints.push(`condemned: cannot be as claimed (${possible.join(", ")})`);
  if (wordOf(headline) === "against") complaints.push("condemned: the headline speaks against it");
  for (const { parts, odds } of weighing.dates?.parts ?? [])
    if (
      odds.original + odds.reworked < odds.later + odds.reused &&
      !parts.every((part) => ownedUp.includes(part))
    )
      complaints.push(
        `condemned: ${parts.join(", ")} likelier not of the first making (${JSON.stringify(odds)})`,
      );
  const claimed = among(weighing, "as-claimed") + among(weighing, "later-parts");
  for (const { kind, posterior } of weighing.rivals?.weighed ?? [])
    if (kind !== outdone && posterior > claimed * HALF_A_DECADE)
      complaints.push(`condemned: ${kind} does better by far (${posterior}, ${claimed})`);
  return complaints;
}

export const wordOf = (headline: string): string =>
  /does not discriminate/.test(headline)
    ? "does not discriminate"
    : (/speaks (for|against)/.exec(headline)?.[1] ?? "beyond the model");

const likeliest = (odds: PartDates["odds"]): string =>
  STATES.reduce((best, state) => (odds[state] > odds[best] ? state : best));

const covers = ({ credible }: Pick<YearOdds, "credible">, year: number): boolean =>
  credible.years.some(([from, to]) => year >= (from ?? year) && year <= (to ?? year));

function findingIn({ findings }: Report, id: string): string | undefined {
  const found = findings.find((finding) => finding.id === id);
  return found && [found.label, found.hardness, found.direction].filter(Boolean).join(" ");
}

/** Parts that stand in rule-outs against the attribution. */
function ruledOutIn({ ruleOuts }: Report, hardness: RuleOut["hardness"]): readonly string[] {
  const against = ruleOuts.filter((one) => one.hardness === hardness && one.against === "attribution");
  return [
    ...new Set(
      against.flatMap(({ parts }): readonly string[] => (parts.length > 0 ? parts : ["attribution"])),
    ),
  ].sort();
}

function signIn({ signs }: Report, claim: string): string {
  const found = signs.filter((sign) => sign.claim === claim);
  return found.length === 0
    ? "is not there"
    : found
        .map(({ standing, because }) =>
          standing === "stands"
            ? "stands"
            : `set aside by ${because.map(({ observation }) => observation).join(", ")}`,
        )
        .join("; ");
}

function cheapest(mends: Mends | undefined, id: string): string | undefined {
  const [first] = mends?.perPart.find(({ parts }) => parts.some((part) => part === id))?.options ?? [];
  return first?.givenUp.map(({ kind }) => kind).join(" and ");
}

const among = ({ rivals }: Weighing, kind: RivalKind): number =>
  (rivals?.weighed ?? []).reduce((sum, one) => (one.kind === kind ? sum + one.posterior : sum), 0);
