import type { VoidIf } from "#server/domain/report.ts";
import type { Year } from "#server/domain/years.ts";
import { CitationLine } from "#web/shared/claims/CitationLine.tsx";
import { DisputedMark } from "#web/shared/claims/DisputedMark.tsx";
import { Button } from "#web/shared/ui/Button.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { sayYears } from "#web/shared/words/say-years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./DatingStrips.module.css";
import { Ground } from "./Ground.tsx";
import type { Glossary } from "./glossary.ts";
import { SetAsideClaims } from "./SetAsideClaims.tsx";
import { Steps } from "./Steps.tsx";
import { WayLine } from "./StripLine.tsx";
import type { StripRow } from "./strip-row.ts";

interface Props {
  row: StripRow;
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
  glossary: Glossary;
  onShowWays?: ((id: string) => void) | undefined;
  onEdit?: ((row: StripRow) => void) | undefined;
}

const LOOK: Readonly<Record<VoidIf["standing"], string>> = {
  "not-looked-for": "not looked for yet: look",
  "could-not-be-seen": "could not be seen",
  "merely-possible": "seen as a possibility only: make sure",
};

/** What stands below an unfolded strip: the sentence, its chain with sources, its ways, what is set aside, what to look for. */
export const StripDetail = ({ row, axis, claimed, glossary, onShowWays, onEdit }: Props) => (
  <div className={styles["detail"]}>
    {row.ways.length === 0 ? null : (
      <ul className={styles["ways"]} aria-label="Ways it can come about">
        {row.ways.map((way) => (
          <li key={way.label} className={styles["way"]} data-open={way.isOpen}>
            <span className={styles["name"]}>
              {way.isOpen ? "by" : "not by"} {way.label}
            </span>
            <span className={styles["plot"]} aria-hidden="true">
              <Ground axis={axis} claimed={claimed} />
              <WayLine years={way.years} isOpen={way.isOpen} axis={axis} />
            </span>
            <span className={styles["words"]}>
              {way.isOpen ? sayYears(way.years) : `way excluded: ${sayYears(way.years)}`}
            </span>
          </li>
        ))}
      </ul>
    )}
    <div className={styles["told"]}>
      <p className={styles["says"]}>{row.says}</p>
      {row.signs.map((sign) => (
        <div key={sign.says} className={styles["says"]}>
          <p>{sign.says}</p>
          {[...sign.because, ...sign.look].map((line) => (
            <p key={line} className={styles["beside"]}>
              {line}
            </p>
          ))}
          {glossary.findClaim(sign.claim)?.citations.map((citation) => (
            <p
              key={`${citation.source?.id} ${citation.locator} ${citation.basis}`}
              className={styles["beside"]}
            >
              <TextLink to={`/claims/${sign.claim}`}>The claim</TextLink>{" "}
              <DisputedMark claim={glossary.findClaim(sign.claim)} />{" "}
              <CitationLine citation={citation} isShort />
            </p>
          ))}
        </div>
      ))}
      {row.steps.length > 0 ? <Steps steps={row.steps} glossary={glossary} /> : null}
      {row.steps.length === 0 && row.paths.length > 0 ? (
        <ol className={styles["paths"]} aria-label="Paths">
          {row.paths.map((path) => (
            <li key={path}>{path}</li>
          ))}
        </ol>
      ) : null}
      <SetAsideClaims setAside={row.setAside} glossary={glossary} />
      {row.voidIf.map((exception) => (
        <p key={exception.exception} className={styles["beside"]}>
          Would count for nothing if found with {glossary.labelOf(exception.condition)}:{" "}
          {LOOK[exception.standing]}.
        </p>
      ))}
      <p className={styles["deeds"]}>
        {onShowWays && row.pathCount > 0 ? (
          <Button look="quiet" onPress={() => onShowWays(row.id)}>
            {row.pathCount === 1 ? "Draw the path" : `Draw the ${row.pathCount} paths`}
          </Button>
        ) : null}
        {onEdit && row.observation !== undefined ? (
          <Button look="quiet" onPress={() => onEdit(row)}>
            Change what was seen
          </Button>
        ) : null}
      </p>
    </div>
  </div>
);
