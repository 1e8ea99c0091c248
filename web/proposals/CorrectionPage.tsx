import { useSuspenseQuery } from "@apollo/client/react";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { ClaimCorrection } from "./ClaimCorrection.tsx";
import { CorrectionDocument } from "./CorrectionPage.graphql.ts";
import styles from "./proposals.module.css";
import { TermCorrection } from "./TermCorrection.tsx";

/** Where a claim or a term is put right: what is wrong is chosen, and becomes a draft that shows what it would do. */
export function CorrectionPage({ id }: { id: string }) {
  const { data } = useSuspenseQuery(CorrectionDocument, {
    variables: { id },
    fetchPolicy: "cache-and-network",
  });
  const [edit] = data.standing;
  const says = data.claim?.says ?? data.term?.label;
  if (edit?.before === undefined || edit.kind === "source" || says === undefined) return <NotFoundPage />;
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <p>
          <TextLink to={`/${edit.kind}s/${id}`}>{says}</TextLink>
        </p>
        <PageHeading title="Propose a correction">Propose a correction</PageHeading>
        <p className={styles["note"]}>
          Say what is wrong. It becomes a draft of yours that shows what it would change, and nothing counts
          before somebody else accepts it.
        </p>
      </header>
      {edit.kind === "claim" ? (
        <ClaimCorrection claim={edit.before} says={says} />
      ) : (
        <TermCorrection term={edit.before} />
      )}
      <p>
        Something else is wrong?{" "}
        <TextLink to={`/house/propose?kind=correction&about=${id}`}>Write all of it anew</TextLink>
      </p>
    </article>
  );
}
