import { id } from "#server/domain/ids.ts";
import { FeatureDrawing } from "../drawings/FeatureDrawing.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { basisWords } from "../shared/words/claim-words.ts";
import { aidWords, moveWords } from "../shared/words/looking-words.ts";
import type { SheetEntryFragment } from "./SheetPage.graphql.ts";
import styles from "./SheetRows.module.css";
import { sayHow } from "./say-how.ts";
import { Ticks } from "./Ticks.tsx";

const SMALL = 64;
/** Claims linked beside what a feature would mean; the others stand on its own page. */
const CLAIMS_LINKED = 3;
const termId = (text: string) => id<"term">(text);

type Feature = NonNullable<SheetEntryFragment["feature"]>;

const broaderOf = ({ broader }: Feature) =>
  [broader, broader?.broader, broader?.broader?.broader].flatMap((term) => (term ? [termId(term.id)] : []));

/** A feature to look for: what it looks like, how to look, what it would mean, and boxes to tick. */
export function SheetEntry({ entry }: { entry: SheetEntryFragment }) {
  const { feature } = entry;
  if (!feature) return null;
  const { looking } = feature;
  const isLicensed = looking?.move === "SOMETHING_UNFASTENED" || looking?.move === "SAMPLE_TAKEN";
  return (
    <li className={styles["entry"]}>
      <div className={styles["drawing"]}>
        <FeatureDrawing term={termId(feature.id)} broaderTerms={broaderOf(feature)} size={SMALL} />
      </div>
      <div className={styles["words"]}>
        <h4>
          <TextLink to={`/terms/${feature.id}`} className={styles["name"] ?? ""}>
            {feature.label}
          </TextLink>
        </h4>
        {looking ? (
          <p>
            {sayHow(looking.how)}
            {looking.aids.length > 0 ? (
              <span className={styles["aids"]}> {looking.aids.map((aid) => aidWords[aid]).join(", ")}.</span>
            ) : null}
          </p>
        ) : null}
        {looking && isLicensed ? (
          <p className={styles["caution"]}>Caution: {moveWords[looking.move].caution}</p>
        ) : null}
        <p className={styles["means"]}>
          {entry.means}{" "}
          <span className={styles["basis"]}>
            {entry.bases.map((basis) => basisWords[basis]).join("; ")}:{" "}
            {entry.claims.slice(0, CLAIMS_LINKED).map(({ id: claim }, i) => (
              <span key={claim}>
                {i > 0 ? ", " : ""}
                <TextLink to={`/claims/${claim}`} className={styles["claim"] ?? ""}>
                  {claim.replace(/^claim\./, "")}
                </TextLink>
              </span>
            ))}
          </span>
        </p>
        <Ticks hasNotes />
      </div>
    </li>
  );
}
