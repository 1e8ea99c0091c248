import type { TermRow } from "#web/graph/around-row.ts";
import { KindMark } from "#web/graph/KindMark.tsx";
import { ClaimLine } from "../shared/claims/ClaimLine.tsx";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import type { AroundLinkFragment } from "./AroundPage.graphql.ts";
import styles from "./AroundPage.module.css";
import { type AroundEntry, type More, type Neighbour, sayDated } from "./around-groups.ts";

interface Props {
  entry: AroundEntry;
  isOpen: boolean;
  onOpen: (isOpen: boolean) => void;
}

/** A neighbour, how it is joined and its years; unfolded, who says so and where to go from it. */
export const AroundItem = ({ entry, isOpen, onOpen }: Props) => (
  <Disclosure
    isOpen={isOpen}
    onOpenChange={onOpen}
    summary={entry.type === "more" ? `${entry.count} more ${entry.words}` : <Summary neighbour={entry} />}
  >
    {entry.type === "more" ? <LeftOut more={entry} /> : <Details neighbour={entry} />}
  </Disclosure>
);

const Summary = ({
  neighbour: { number, step, term, from, words, dated, datedCount },
}: {
  neighbour: Neighbour;
}) => (
  <span className={styles["summary"]}>
    <span className={styles["words"]}>
      {step === 2 ? <span className="visually-hidden">from {from.label}: </span> : null}
      {words}
    </span>
    <span>
      <span className={styles["number"]}>{number}</span>{" "}
      <KindMark kind={term.kind.toLowerCase() as TermRow["kind"]} /> {term.label}{" "}
      <span className={styles["kind"]}>{termKindWords[term.kind].one}</span>
    </span>
    <span className={styles["years"]}>{sayDated(dated, datedCount) ?? "no years stated"}</span>
  </span>
);

const Details = ({ neighbour: { id, link, also } }: { neighbour: Neighbour }) => (
  <div className={styles["details"]}>
    <p className={`screen-only ${styles["choices"]}`}>
      <TextLink to={`/terms/${id}/around`}>Look around from it</TextLink>
      <TextLink to={`/terms/${id}`}>Its page</TextLink>
    </p>
    <WhoSaysSo link={link} />
    {also.map((each) => (
      <div key={each.link.id}>
        <p>
          Also {each.words} <TextLink to={`/terms/${each.other.id}`}>{each.other.label}</TextLink>
        </p>
        <WhoSaysSo link={each.link} />
      </div>
    ))}
  </div>
);

const WhoSaysSo = ({ link: { claims, claimCount } }: { link: AroundLinkFragment }) =>
  claimCount === 0 ? (
    <p className={styles["years"]}>The term itself states it; no claim stands behind it.</p>
  ) : (
    <>
      <ul>
        {claims.map((claim) => (
          <li key={claim.id}>
            <ClaimLine claim={claim} />
          </li>
        ))}
      </ul>
      {claimCount > claims.length ? (
        <p className={styles["years"]}>and {claimCount - claims.length} more claims, on either page</p>
      ) : null}
    </>
  );

const LeftOut = ({ more: { count, terms } }: { more: More }) => (
  <p className={styles["details"]}>
    {terms.map(({ id, label }, i) => (
      <span key={id}>
        {i === 0 ? "" : ", "}
        <TextLink to={`/terms/${id}`}>{label}</TextLink>
      </span>
    ))}
    {count > terms.length ? ` and ${count - terms.length} more` : null}
  </p>
);
