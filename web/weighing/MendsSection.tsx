import type { Hardness } from "#server/domain/claim.ts";
import { CitationLine } from "#web/shared/claims/CitationLine.tsx";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { Aged } from "./Aged.tsx";
import { MendChoice } from "./MendChoice.tsx";
import styles from "./Weighing.module.css";
import { useStory, useWeighed } from "./weighing-desk.ts";

const LEVELS: readonly { readonly id: Hardness; readonly label: string }[] = [
  { id: "physical", label: "for it to be possible" },
  { id: "practice", label: "with nothing unusual" },
];

/** What would have to be true for the claim to stand: one of several for each part, and the story that they make. */
export function MendsSection() {
  const { weighed } = useWeighed();
  const { level, setLevel, story, choose } = useStory();
  const words = weighed.words.mends?.find((each) => each.level === level);
  return (
    <Aged
      stage="mends"
      id="would-have-to-be-true"
      aria-label="What would have to be true"
      className={styles["section"]}
    >
      <h2 className={styles["heading"]}>What would have to be true</h2>
      {story === undefined || words === undefined ? (
        <p className={styles["none"]}>It is worked out after the years.</p>
      ) : (
        <>
          <div className="screen-only">
            <RadioGroup
              label="For the claim to stand"
              isLabelHidden
              choices={LEVELS}
              value={level}
              onChange={setLevel}
            />
          </div>
          <div aria-live="polite" className={styles["story"]}>
            <p className={styles["says"]}>{story.says}</p>
            {story.price === "" ? null : <p className={styles["line"]}>{story.price}</p>}
            {story.rows.length === 0 ? null : (
              <p className={styles["line"]}>
                {story.isLeast ? words.proved : "Another story of those below asks less."}
              </p>
            )}
          </div>
          {words.moved === undefined ? null : <p className={styles["line"]}>{words.moved}</p>}
          {story.rows.map((row) => (
            <MendChoice key={row.key} row={row} onChoose={choose} />
          ))}
          <Claims />
        </>
      )}
    </Aged>
  );
}

/** The claims that the chosen story gives up, with their sources: what would have to be wrong. */
function Claims() {
  const { weighed } = useWeighed();
  const { story } = useStory();
  const given = new Set(
    story?.rows.flatMap(({ options, chosen }) => options.find(({ key }) => key === chosen)?.claims ?? []),
  );
  const claims = [...given].flatMap((id) => weighed.claims.get(id) ?? []);
  if (claims.length === 0) return null;
  return (
    <div className={styles["claims"]}>
      <h3>Claims that would be wrong</h3>
      <ul>
        {claims.map((claim) => (
          <li key={claim.id}>
            <TextLink to={`/claims/${claim.id}`}>{claim.says}</TextLink>{" "}
            {claim.citations.map((citation) => (
              <CitationLine
                key={`${citation.source?.id} ${citation.locator} ${citation.basis}`}
                citation={citation}
                isShort
              />
            ))}
          </li>
        ))}
      </ul>
    </div>
  );
}
