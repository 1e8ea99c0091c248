import { useSuspenseQuery } from "@apollo/client/react";
import { useSearchParams } from "wouter";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { PlanChoices } from "./PlanChoices.tsx";
import { PlanOfPiece } from "./PlanOfPiece.tsx";
import { InspectionPlanDocument } from "./PlanPage.graphql.ts";
import { PlanView } from "./PlanView.tsx";
import { readPlanQuestion, writePlanQuestion } from "./plan-question.ts";
import styles from "./Sheet.module.css";

/** What to look at on a piece, in order, before it is there or with it in front of one. */
export function PlanPage() {
  const [params, setParams] = useSearchParams();
  const { form, region, date, piece } = readPlanQuestion(params);
  if (piece !== null) return <PlanOfPiece id={piece} />;
  if (form === null || date === null)
    return (
      <article className={styles["page"]}>
        <header className={styles["head"]}>
          <PageHeading title="Plan a look">Plan a look</PageHeading>
          <p className={styles["note"]}>
            Before the piece is in front of you: say what is claimed of it, and get the looks that would tell
            most of that claim and of what was done to the parts, in the order in which one goes round a
            piece. Each says what it would do if the thing is there, and if it is not.
          </p>
          <PlanChoices
            form={
              form === null ? null : { id: form, label: form.replace(/^form\./, "").replaceAll("-", " ") }
            }
            region={null}
            date={date}
            onAsk={(question) => setParams(writePlanQuestion(question))}
          />
        </header>
      </article>
    );
  return <PlanFor key={`${form} ${region} ${date}`} form={form} region={region} date={date} />;
}

interface Asked {
  form: string;
  region: string | null;
  date: string;
}

function PlanFor(asked: Asked) {
  const [, setParams] = useSearchParams();
  const { data } = useSuspenseQuery(InspectionPlanDocument, {
    variables: { ...asked, examined: new Date().getFullYear() },
  });
  const plan = data.inspectionPlan;
  return (
    <PlanView
      plan={plan}
      choices={
        <PlanChoices
          form={plan.__typename === "InspectionPlan" ? plan.form : null}
          region={plan.__typename === "InspectionPlan" ? plan.region : null}
          date={asked.date}
          onAsk={(question) => setParams(writePlanQuestion(question))}
        />
      }
    />
  );
}
