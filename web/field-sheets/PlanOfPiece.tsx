import { useSuspenseQuery } from "@apollo/client/react";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { type OnPlanFragment, PieceOnPlanDocument } from "./PlanOfPiece.graphql.ts";
import { InspectionPlanDocument } from "./PlanPage.graphql.ts";
import { PlanView } from "./PlanView.tsx";
import styles from "./Sheet.module.css";
import { usePieceOnPlan } from "./use-piece-on-plan.ts";

/** The plan of an examination by what is claimed of it, filled in as one looks. */
export function PlanOfPiece({ id }: { id: string }) {
  const { data } = useSuspenseQuery(PieceOnPlanDocument, {
    variables: { id },
    fetchPolicy: "cache-and-network",
  });
  if (!data.examination) return <NotFoundPage what="examination" id={id} />;
  const { form } = data.examination.piece.attribution;
  return form ? (
    <Filled examination={data.examination} form={form.id} />
  ) : (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <PageHeading title="Plan a look">No form is claimed of this piece</PageHeading>
        <p className={styles["note"]}>
          What there is to look at hangs on the form. Say what it is on{" "}
          <TextLink to={`/pieces/${id}`}>the page of the piece</TextLink>, then plan the look.
        </p>
      </header>
    </article>
  );
}

function Filled({ examination, form }: { examination: OnPlanFragment; form: string }) {
  const desk = usePieceOnPlan(examination);
  const { attribution, examined } = examination.piece;
  const { data } = useSuspenseQuery(InspectionPlanDocument, {
    variables: { form, region: attribution.region?.id ?? null, date: attribution.date, examined },
  });
  return <PlanView plan={data.inspectionPlan} filledFor={{ id: examination.id, desk }} />;
}
