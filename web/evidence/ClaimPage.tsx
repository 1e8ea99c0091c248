import { useSuspenseQuery } from "@apollo/client/react";
import { CitationLine } from "../shared/claims/CitationLine.tsx";
import { useReadOn } from "../shared/navigation/reading-revision.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { statusWords } from "../shared/words/claim-words.ts";
import { relationWords } from "../shared/words/relation-words.ts";
import { termKindWords } from "../shared/words/term-words.ts";
import { ClaimBeside } from "./ClaimBeside.tsx";
import { ClaimExceptions } from "./ClaimExceptions.tsx";
import { ClaimMargin } from "./ClaimMargin.tsx";
import { ClaimPageDocument } from "./ClaimPage.graphql.ts";
import styles from "./ClaimPage.module.css";
import { ClaimWays } from "./ClaimWays.tsx";
import { ClaimYears } from "./ClaimYears.tsx";
import { Contribute } from "./Contribute.tsx";
import { DisputesOfClaim } from "./DisputesOfClaim.tsx";
import { Absent } from "./history/Absent.tsx";
import { History } from "./history/History.tsx";
import { Kicker } from "./Kicker.tsx";
import { LeansOn } from "./leaning/LeansOn.tsx";
import reading from "./reading.module.css";

/** One claim: its sentence, its years, where it holds, how far it can be leaned on, who says so, and what stands against it. */
export function ClaimPage({ id }: { id: string }) {
  const readOn = useReadOn();
  const { data } = useSuspenseQuery(ClaimPageDocument, { variables: { id, ...readOn } });
  if (!data.claim) return <Absent id={id} />;
  const { claim } = data;
  const { subject } = claim;
  return (
    <article className={reading["page"]}>
      <header className={reading["head"]}>
        <Kicker
          steps={[
            ...(subject
              ? [
                  { to: `/evidence?kind=${subject.kind}`, name: termKindWords[subject.kind].many },
                  { to: `/terms/${subject.id}`, name: subject.label },
                ]
              : claim.of
                ? [{ to: `/claims/${claim.of.id}`, name: "exception to a claim" }]
                : []),
            { name: relationWords[claim.relation] },
          ]}
        />
        <PageHeading title={claim.says}>{claim.says}</PageHeading>
        {claim.status === "ACCEPTED" ? null : (
          <p className={styles["status"]}>This claim is {statusWords[claim.status]}.</p>
        )}
        {claim.note ? <p className={reading["note"]}>{claim.note}</p> : null}
        <Contribute of={claim.id} />
      </header>
      <div className={reading["main"]}>
        <ClaimYears claim={claim} />
        <ClaimWays claim={claim} />
        <section className={reading["section"]}>
          <h2>
            Who says so{" "}
            <span>
              · {claim.citations.length === 1 ? "1 citation" : `${claim.citations.length} citations`}
            </span>
          </h2>
          <ul className={reading["list"]}>
            {claim.citations.map((citation) => (
              <li key={`${citation.source?.id} ${citation.locator} ${citation.basis}`}>
                <CitationLine citation={citation} />
              </li>
            ))}
          </ul>
        </section>
        <DisputesOfClaim claim={claim.id} isAccepted={claim.status === "ACCEPTED"} />
        <ClaimExceptions claim={claim} />
        {subject ? (
          <ClaimBeside
            claim={claim}
            others={subject.claims.edges.map((edge) => edge.node)}
            moreAt={subject.claims.pageInfo.hasNextPage ? `/terms/${subject.id}` : undefined}
          />
        ) : null}
        {claim.status === "ACCEPTED" && readOn.revision === undefined ? <LeansOn claim={claim.id} /> : null}
        <History of={claim.id} />
      </div>
      <ClaimMargin claim={claim} />
    </article>
  );
}
