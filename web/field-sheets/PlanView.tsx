import type { ReactNode } from "react";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { ActionButton } from "../actions/ActionButton.tsx";
import { printPage } from "../actions/print-page.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { NotAllFeatures } from "../shared/words/NotAllFeatures.tsx";
import { sayDating } from "../shared/words/say-dating.ts";
import { BeginFromSheet } from "./BeginFromSheet.tsx";
import { PlanBlanks } from "./PlanBlanks.tsx";
import { PlanItems } from "./PlanItems.tsx";
import type { InspectionPlanQuery } from "./PlanPage.graphql.ts";
import { addressOfPlan } from "./plan-question.ts";
import styles from "./Sheet.module.css";
import { SheetCautions } from "./SheetCautions.tsx";
import type { PieceDesk } from "./use-piece-on-plan.ts";

interface Props {
  plan: InspectionPlanQuery["inspectionPlan"];
  /** What is asked, to be changed; absent where a piece asks. */
  choices?: ReactNode;
  /** The piece that it is filled in for. */
  filledFor?: { readonly id: string; readonly desk: PieceDesk };
}

/** A plan: for what, with what to be careful of, then what to look at. */
export function PlanView({ plan, choices, filledFor }: Props) {
  if (plan.__typename === "Refused" || !plan.form)
    return (
      <article className={styles["page"]}>
        <header className={styles["head"]}>
          <PageHeading title="Plan a look">No plan for what is asked</PageHeading>
          {plan.__typename === "Refused"
            ? plan.problems.map(({ message }) => <p key={message}>{message}</p>)
            : null}
          {choices}
        </header>
      </article>
    );
  const { form, region, date, items, considered, isCut } = plan;
  const title = filledFor ? filledFor.desk.piece.title : form.label;
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <p className={`screen-only ${styles["kicker"]}`}>
          {filledFor ? (
            <TextLink to={`/pieces/${filledFor.id}`}>the examination</TextLink>
          ) : (
            <TextLink to={`/sheets/${form.id}`}>field sheet of the form</TextLink>
          )}
        </p>
        <PageHeading title={`Plan of the look: ${title}`}>Plan of the look: {title}</PageHeading>
        <p className={styles["for"]}>Claimed: {sayClaimed(form.label, region?.label, date)}.</p>
        {choices}
        <div className={`screen-only ${styles["buttons"]}`}>
          <ActionButton action={printPage} context={undefined} look="main" />
          {filledFor ? null : (
            <BeginFromSheet
              sheet={{ ...plan, form }}
              says="Begin an examination with this plan"
              opens={(piece) => addressOfPlan({ piece })}
            />
          )}
          <TextLink to="/method/weighing#looking-next">How looks are chosen</TextLink>
        </div>
      </header>
      <SheetCautions />
      {isCut ? <NotAllFeatures /> : null}
      <PlanBlanks hasBlanks={!filledFor} count={items.length} considered={considered} />
      {filledFor?.desk.refusal ? (
        <p role="alert" className={styles["refusal"]}>
          {filledFor.desk.refusal}
        </p>
      ) : null}
      {items.length === 0 ? (
        <p>Nothing is known yet that would tell anything on this form. Look up its parts in the evidence.</p>
      ) : (
        <PlanItems items={items} {...(filledFor ? { desk: filledFor.desk } : {})} />
      )}
    </article>
  );
}

function sayClaimed(form: string, region: string | undefined, date: string): string {
  const dating = readDating(date, "event");
  return [form, region, isProblem(dating) ? date : sayDating(dating)]
    .filter((said) => said !== undefined)
    .join(", ");
}
