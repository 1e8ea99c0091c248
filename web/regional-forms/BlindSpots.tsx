import { termKindWords } from "../shared/words/term-words.ts";
import { listInWords } from "./list-in-words.ts";
import type { RegionProfile } from "./region-profile.ts";
import styles from "./regional.module.css";

type Kind = RegionProfile["missingKinds"][number];

/** Kinds of subject that have a heading of the page to themselves. */
const OF_OWN_HEADING: readonly Kind[] = ["FORM", "MAKER"];

const and = new Intl.ListFormat("en-GB", { type: "conjunction" });

/** What the graph does not know of a region, in sentences. */
export function blindSpotsOf({
  missingKinds,
  wider,
  sources,
  within,
  found,
}: RegionProfile): readonly string[] {
  const spots: string[] = [];
  if (within === 0) return ["Nothing at all is known of it here."];
  const namesOf = (kinds: readonly Kind[]) =>
    and.format(kinds.toSorted().map((kind) => termKindWords[kind].many));
  const manyOf = (kinds: readonly Kind[]) => listInWords(kinds.map((kind) => termKindWords[kind].many));
  // The kinds that share a heading with others: a heading with something under it does not lack them whole.
  const shown = new Set(
    found.flatMap(({ group, subject }) => (group === "PRACTICE" && subject ? [subject.kind] : [])),
  );
  const isBeside = (kind: Kind) => shown.size > 0 && !OF_OWN_HEADING.includes(kind);
  const beside = missingKinds.filter(isBeside);
  const missing = missingKinds.filter((kind) => !isBeside(kind));
  if (wider && missing.length > 0) spots.push(`No claim on ${manyOf(missing)}, which ${wider.label} has.`);
  if (wider && beside.length > 0)
    spots.push(
      `Under “Practices and features” there are ${namesOf([...shown])} alone: no claim is on ${manyOf(beside)}, which ${wider.label} has.`,
    );
  if (sources.length === 0) spots.push("Known from no published source.");
  if (sources.length === 1) spots.push("Known from one published source only: no other confirms it.");
  if (!found.some(({ claims }) => claims.some(({ years }) => years !== null)))
    spots.push("Nothing is dated: the region says where, never when.");
  return spots;
}

/** The list of what is not known, so that silence is not taken for absence. */
export function BlindSpots({ profile }: { profile: RegionProfile }) {
  const spots = blindSpotsOf(profile);
  return (
    <section className={styles["section"]}>
      <h2>Blind spots</h2>
      {spots.length === 0 ? (
        <p className={styles["empty"]}>
          Every kind of subject that its wider region has is spoken of here, from more than one source.
        </p>
      ) : (
        <ul className={styles["lines"]}>
          {spots.map((spot) => (
            <li key={spot}>{spot}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
