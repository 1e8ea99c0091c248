import { useSuspenseQuery } from "@apollo/client/react";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { ExaminationPageDocument } from "./ExaminationPage.graphql.ts";

/** One piece: what is claimed of it, what was seen, and what follows. */
export function ExaminationPage({ id }: { id: string }) {
  const { data } = useSuspenseQuery(ExaminationPageDocument, { variables: { id } });
  if (!data.examination) return <NotFoundPage what="examination" id={id} />;
  const { piece, examined } = data.examination;
  return (
    <>
      <PageHeading title={piece.title}>{piece.title}</PageHeading>
      {examined.__typename === "Examined" ? (
        <p>{examined.words.headline}</p>
      ) : (
        examined.problems.map((problem) => <p key={problem.path.join()}>{problem.message}</p>)
      )}
    </>
  );
}
