import { id } from "#server/domain/ids.ts";
import { FeatureDrawing } from "../drawings/FeatureDrawing.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { basisWords } from "../shared/words/claim-words.ts";
import { aidWords, moveWords } from "../shared/words/looking-words.ts";
import styles from "./Plan.module.css";
import type { PlanItemFragment } from "./PlanPage.graphql.ts";
import { RecordOnPiece } from "./RecordOnPiece.tsx";
import rows from "./SheetRows.module.css";
import { sayHow } from "./say-how.ts";
import { Ticks } from "./Ticks.tsx";
import type { PieceDesk } from "./use-piece-on-plan.ts";

const SMALL = 64;
/** Claims linked beside an item; the others stand on the page of its feature. */
const CLAIMS_LINKED = 3;
/** The looks that come before all others. */
const FIRST = 5;
const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const termId = (text: string) => id<"term">(text);

type Feature = NonNullable<PlanItemFragment["feature"]>;

const broaderOf = ({ broader }: Feature) =>
  [broader, broader?.broader, broader?.broader?.broader].flatMap((term) => (term ? [termId(term.id)] : []));

/** Something to look at: where, how, what each answer would do; boxes to tick, or what is recorded of it on a piece. */
export function PlanEntry({ item, desk }: { item: PlanItemFragment; desk: PieceDesk | undefined }) {
  const { feature, part, rank } = item;
  if (!feature || !part) return null;
  const { looking } = feature;
  const isLicensed = looking?.move === "SOMETHING_UNFASTENED" || looking?.move === "SAMPLE_TAKEN";
  return (
    <li className={rows["entry"]}>
      <div className={rows["drawing"]}>
        <FeatureDrawing term={termId(feature.id)} broaderTerms={broaderOf(feature)} size={SMALL} />
      </div>
      <div className={rows["words"]}>
        <h3 className={styles["what"]}>
          <span className={rank <= FIRST ? styles["first"] : styles["rank"]}>
            <span className="visually-hidden">{rank <= FIRST ? "Among the first, " : "Number "}</span>
            {rank}
          </span>
          <span>
            <span className={styles["part"]}>
              {capitalise([part, ...item.alsoOn].map(({ label }) => label).join(", "))}:
            </span>{" "}
            <TextLink to={`/terms/${feature.id}`} className={rows["name"] ?? ""}>
              {feature.label}
            </TextLink>
          </span>
        </h3>
        {looking ? (
          <p>
            {sayHow(looking.how)}
            {looking.aids.length > 0 ? (
              <span className={rows["aids"]}> {looking.aids.map((aid) => aidWords[aid]).join(", ")}.</span>
            ) : null}
          </p>
        ) : null}
        {looking && isLicensed ? (
          <p className={rows["caution"]}>Caution: {moveWords[looking.move].caution}</p>
        ) : null}
        <dl className={styles["answers"]}>
          <div>
            <dt>Seen</dt>
            <dd>{item.ifSeen.says}</dd>
          </div>
          <div>
            <dt>Not there</dt>
            <dd>{item.ifAbsent.says}</dd>
          </div>
        </dl>
        <p className={rows["means"]}>
          {item.means}{" "}
          <span className={rows["basis"]}>
            {item.bases.map((basis) => basisWords[basis]).join("; ")}
            {item.claims.length > 0 ? ": " : ""}
            {item.claims.slice(0, CLAIMS_LINKED).map(({ id: claim }, i) => (
              <span key={claim}>
                {i > 0 ? ", " : ""}
                <TextLink to={`/claims/${claim}`} className={rows["claim"] ?? ""}>
                  {claim.replace(/^claim\./, "")}
                </TextLink>
              </span>
            ))}
          </span>
        </p>
        {desk ? <RecordOnPiece kind={part} feature={feature} desk={desk} /> : <Ticks hasNotes />}
      </div>
    </li>
  );
}
