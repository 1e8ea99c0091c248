import type { SetAside } from "#server/domain/report.ts";
import { DisputedMark } from "#web/shared/claims/DisputedMark.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import styles from "./DatingStrips.module.css";
import type { Glossary } from "./glossary.ts";

const REASONS: Readonly<Record<SetAside["reason"], string>> = {
  defeated: "an exception holds",
  overridden: "a claim nearer to this place stands in its stead",
  "out-of-scope": "it is meant for another place, form or part",
  "open-list": "it lists some ways only, so it bounds nothing",
};

/** Claims that were met and count for nothing here, each with the reason: shown, never hidden. */
export function SetAsideClaims({
  setAside,
  glossary,
}: {
  setAside: readonly SetAside[];
  glossary: Glossary;
}) {
  if (setAside.length === 0) return null;
  return (
    <ul className={styles["aside"]} aria-label="Claims set aside">
      {setAside.map(({ claim, reason, by }) => (
        <li key={`${claim} ${reason}`}>
          Set aside, since {REASONS[reason]}:{" "}
          <TextLink to={`/claims/${claim}`}>{glossary.findClaim(claim)?.says ?? claim}</TextLink>{" "}
          <DisputedMark claim={glossary.findClaim(claim)} />
          {by === undefined ? null : (
            <>
              {" "}
              By: <TextLink to={`/claims/${by}`}>{glossary.findClaim(by)?.says ?? by}</TextLink>
            </>
          )}
        </li>
      ))}
    </ul>
  );
}
