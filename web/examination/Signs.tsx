import { memo } from "react";
import { countSigns } from "#server/domain/count-signs.ts";
import type { Report, Sign } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { speaksOfChange } from "#server/domain/speaks-of-change.ts";
import { CitationLine } from "#web/shared/claims/CitationLine.tsx";
import { DisputedMark } from "#web/shared/claims/DisputedMark.tsx";
import { KeptDisclosure } from "#web/shared/ui/KeptDisclosure.tsx";
import type { Glossary } from "#web/strips/glossary.ts";
import { RowMark } from "#web/strips/RowMark.tsx";
import styles from "./ConclusionsColumn.module.css";

interface Props {
  report: Report;
  words: ReportWords;
  glossary: Glossary;
}

/** Signs of alteration: those that stand, then those set aside with the reason; after them what speaks for original parts. None is hidden. */
export function Signs({ report, words, glossary }: Props) {
  const ofChange = report.signs.filter(speaksOfChange);
  const standing = ofChange.filter((sign) => sign.standing === "stands");
  const aside = ofChange.filter((sign) => sign.standing === "set-aside");
  const ofAge = report.signs.filter((sign) => !speaksOfChange(sign));
  const list = (signs: readonly Sign[]) => (
    <ul>
      {signs.map((sign) => (
        <SignItem
          key={`${sign.observation} ${sign.claim}`}
          sign={sign}
          said={words.signs.find((one) => one.observation === sign.observation && one.claim === sign.claim)}
          glossary={glossary}
        />
      ))}
    </ul>
  );
  return (
    <>
      <section aria-label="Signs of alteration">
        <h2 className={styles["heading"]}>
          Signs of alteration{" "}
          {ofChange.length > 0 ? (
            <span>
              · {countSigns(standing)} {countSigns(standing) === 1 ? "stands" : "stand"}, {countSigns(aside)}{" "}
              set aside
            </span>
          ) : null}
        </h2>
        {ofChange.length === 0 ? (
          <p className={styles["none"]}>None recorded.</p>
        ) : (
          list([...standing, ...aside])
        )}
      </section>
      {ofAge.length > 0 ? (
        <section aria-label="Signs that a part is original">
          <h2 className={styles["heading"]}>
            Signs that a part is original <span>· {ofAge.length}</span>
          </h2>
          {list(ofAge)}
        </section>
      ) : null}
    </>
  );
}

interface ItemProps {
  sign: Sign;
  said: ReportWords["signs"][number] | undefined;
  glossary: Glossary;
}

const SignItem = memo(function SignItem({ sign, said, glossary }: ItemProps) {
  if (!said) return null;
  const isAside = sign.standing === "set-aside";
  return (
    <li className={`${styles["why"]} ${isAside ? styles["aside"] : ""}`}>
      <p className={styles["says"]}>
        <RowMark mark={isAside ? "sign-set-aside" : speaksOfChange(sign) ? "sign" : "sign-of-age"} />
        <span>{said.says}</span>
      </p>
      <div className={styles["rest"]}>
        {said.because.map((line) => (
          <p key={line} className={styles["line"]}>
            {line}
          </p>
        ))}
        {said.look.length > 0 ? (
          <KeptDisclosure
            name={`look ${sign.observation} ${sign.claim}`}
            summary={`${said.look.length === 1 ? "One innocent cause" : `${said.look.length} innocent causes`} to look for`}
          >
            {said.look.map((line) => (
              <p key={line} className={styles["look"]}>
                {line}
              </p>
            ))}
          </KeptDisclosure>
        ) : null}
        {glossary.findClaim(sign.claim)?.citations.map((citation) => (
          <p key={`${citation.source?.id} ${citation.locator} ${citation.basis}`} className={styles["line"]}>
            <CitationLine citation={citation} isShort />{" "}
            <DisputedMark claim={glossary.findClaim(sign.claim)} />
          </p>
        ))}
      </div>
    </li>
  );
});
