import type { Finding, Path } from "#server/domain/report.ts";
import { CitationLine } from "../shared/claims/CitationLine.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { sayYears } from "../shared/words/say-years.ts";
import type { Glossary } from "../strips/glossary.ts";
import { pathsToWalk } from "./paths-to-walk.ts";
import styles from "./Walk.module.css";

interface Props {
  finding: Finding;
  glossary: Glossary;
}

/** The paths that make a finding what it is, each walked from the feature over cited claims to its years. */
export function Walk({ finding, glossary }: Props) {
  const paths = pathsToWalk(finding);
  if (paths.length === 0) return <p className={styles["none"]}>No dated claim is reached from it here.</p>;
  return (
    <div className={styles["walks"]}>
      {paths.map((path) => (
        <OneWalk key={`${path.via.join()} ${path.dated}`} path={path} glossary={glossary} />
      ))}
    </div>
  );
}

function OneWalk({ path, glossary }: { path: Path; glossary: Glossary }) {
  const { terms, via, dated } = path;
  const claims = dated === undefined ? via : [...via, dated];
  return (
    <ol className={styles["walk"]} aria-label={`From ${terms.map(glossary.labelOf).join(" to ")}`}>
      {terms.map((term, i) => (
        <li key={term} className={styles["term"]}>
          <p>
            {i === 0 ? "Seen: " : null}
            <TextLink to={`/terms/${term}`}>{glossary.labelOf(term)}</TextLink>
          </p>
          {claims[i] === undefined ? null : <ClaimStep claim={claims[i]} glossary={glossary} />}
        </li>
      ))}
      {path.assumptions.length > 0 ? (
        <li className={styles["assumed"]}>
          Assumed, not cited: where no source dates it for this place, nobody there is taken to have had it
          before the earliest year known anywhere.
        </li>
      ) : null}
      <li className={styles["years"]}>so by this way: {sayYears(path.years)}</li>
    </ol>
  );
}

/** One claim on the way, as a sentence with its citations. */
function ClaimStep({ claim, glossary }: { claim: Path["via"][number]; glossary: Glossary }) {
  const known = glossary.findClaim(claim);
  return (
    <div className={styles["claim"]}>
      <p>
        <TextLink to={`/claims/${claim}`}>{known?.says ?? claim}</TextLink>
      </p>
      {known?.citations.map((citation) => (
        <p key={`${citation.source?.id} ${citation.locator} ${citation.basis}`} className={styles["cited"]}>
          <CitationLine citation={citation} isShort />
        </p>
      ))}
    </div>
  );
}
