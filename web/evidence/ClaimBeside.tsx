import type { ClaimLineFragment } from "../shared/claims/ClaimLine.graphql.ts";
import { ClaimLine } from "../shared/claims/ClaimLine.tsx";
import { scopeInWords } from "../shared/claims/scope-in-words.ts";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { ClaimBar } from "../shared/years/ClaimBar.tsx";
import { claimSpans, yearsDrawn } from "../shared/years/claim-spans.ts";
import { YearsGround } from "../shared/years/YearsGround.tsx";
import { YearTicks } from "../shared/years/YearTicks.tsx";
import { axisAround } from "../shared/years/year-axis.ts";
import styles from "./ClaimBeside.module.css";
import { type Comparison, compareClaims } from "./compare-claims.ts";
import reading from "./reading.module.css";

interface Props {
  claim: ClaimLineFragment;
  /** All claims about the same subject; this one may be among them. */
  others: readonly ClaimLineFragment[];
  /** The subject's page, where `others` are not all there are. */
  moreAt?: string | undefined;
}

const marks = {
  agree: { sign: "●", look: "agree" },
  disagree: { sign: "✕", look: "disagree" },
  elsewhere: { sign: "○", look: "elsewhere" },
} as const;

const sayComparison = (comparison: Comparison, other: ClaimLineFragment): string => {
  if (comparison.kind === "agree") return "can both be true";
  if (comparison.kind === "elsewhere") return `meant for ${scopeInWords(other)}`;
  const { years, on } = comparison;
  return `disagrees by ${years} ${years === 1 ? "year" : "years"}${on ? ` on the ${on}` : ""}`;
};

/** Claims of the same subject and relation, drawn on one axis with this one first: who agrees, who does not. */
export function ClaimBeside({ claim, others, moreAt }: Props) {
  const beside = others.filter((other) => other.relation === claim.relation && other.id !== claim.id);
  if (beside.length === 0) return null;
  const all = [claim, ...beside];
  const spans = all.map((each) => claimSpans(each.relation, each.years));
  const axis = axisAround(spans.flatMap(yearsDrawn));
  const isDrawn = spans.some((each) => each !== undefined);
  const bar = (each: ClaimLineFragment) =>
    isDrawn ? (
      <div className={styles["bar"]}>
        <ClaimBar
          axis={axis}
          spans={claimSpans(each.relation, each.years)}
          isSoft={each.hardness === "PRACTICE"}
        />
      </div>
    ) : null;
  return (
    <section className={`${reading["section"]} ${styles["section"]}`}>
      <h2>
        Beside it <span>· what else is said of the same thing</span>
      </h2>
      {isDrawn ? (
        <>
          <div className={styles["axis"]}>
            <YearTicks axis={axis} />
          </div>
          <div className={styles["ground"]}>
            <YearsGround axis={axis} />
          </div>
          <div className={styles["own"]}>
            <p className={styles["words"]}>This claim</p>
            {bar(claim)}
          </div>
        </>
      ) : null}
      <ul>
        {beside.map((other) => {
          const comparison = compareClaims(claim, other);
          const { sign, look } = marks[comparison.kind];
          return (
            <li key={other.id} className={styles["other"]}>
              <div className={styles["words"]}>
                <p className={styles["verdict"]}>
                  <i aria-hidden="true" className={styles[look]}>
                    {sign}
                  </i>{" "}
                  {sayComparison(comparison, other)}
                </p>
                <ClaimLine claim={other} />
              </div>
              {bar(other)}
            </li>
          );
        })}
      </ul>
      {moreAt ? (
        <p className={reading["more"]}>
          There are more claims than are compared here. <TextLink to={moreAt}>See them all</TextLink>
        </p>
      ) : null}
    </section>
  );
}
