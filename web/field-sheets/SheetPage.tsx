import { useSuspenseQuery } from "@apollo/client/react";
import { useSearchParams } from "wouter";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { ActionButton } from "../actions/ActionButton.tsx";
import { printPage } from "../actions/print-page.ts";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { NotAllFeatures } from "../shared/words/NotAllFeatures.tsx";
import { sayDating } from "../shared/words/say-dating.ts";
import { BeginFromSheet } from "./BeginFromSheet.tsx";
import { FieldSheet, PositionLinks } from "./FieldSheet.tsx";
import { addressOfPlan } from "./plan-question.ts";
import styles from "./Sheet.module.css";
import { SheetCautions } from "./SheetCautions.tsx";
import { SheetChoices } from "./SheetChoices.tsx";
import { SheetHead } from "./SheetHead.tsx";
import { FieldSheetDocument } from "./SheetPage.graphql.ts";
import { readQuestion, writeQuestion } from "./sheet-question.ts";

/** The field sheet of a form: to read on screen, and to take to a piece on paper. */
export function SheetPage({ id: form }: { id: string }) {
  const [params, setParams] = useSearchParams();
  const question = readQuestion(params);
  const { data } = useSuspenseQuery(FieldSheetDocument, {
    variables: { form, region: question.region, date: question.date, each: Number(question.each) },
  });
  const sheet = data.fieldSheet;
  if (sheet.__typename === "Refused") {
    if (sheet.problems.some(({ path }) => path[0] === "form")) return <NotFoundPage what="form" id={form} />;
    return <SheetRefused form={form} messages={sheet.problems.map(({ message }) => message)} />;
  }
  if (!sheet.form) return <NotFoundPage what="form" id={form} />;
  const { label } = sheet.form;
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <p className={`screen-only ${styles["kicker"]}`}>
          <TextLink to="/sheets">field sheets</TextLink>
        </p>
        <PageHeading title={`Field sheet: ${label}`}>Field sheet: {label}</PageHeading>
        <p className={styles["for"]}>{sayFor(sheet.region?.label, question.date)}</p>
        {sheet.form.note ? <p className={`screen-only ${styles["note"]}`}>{sheet.form.note}</p> : null}
        <SheetChoices
          key={`${question.region} ${question.date}`}
          question={question}
          regionLabel={sheet.region?.label ?? ""}
          onChange={(next) => setParams(writeQuestion(next))}
        />
        <div className={`screen-only ${styles["buttons"]}`}>
          <ActionButton action={printPage} context={undefined} look="main" />
          <BeginFromSheet sheet={{ ...sheet, form: sheet.form }} />
          <TextLink to={addressOfPlan({ form, region: question.region, date: question.date })}>
            Only what would tell most
          </TextLink>
          <TextLink to={`/terms/${form}`}>The form and its claims</TextLink>
        </div>
      </header>
      <SheetCautions />
      <SheetHead />
      {sheet.sections.length === 0 ? (
        <p>Nothing is known yet that would tell anything on this form. Look up its parts in the evidence.</p>
      ) : (
        <>
          <PositionLinks sections={sheet.sections} />
          <FieldSheet sections={sheet.sections} form={form} />
          {sheet.isCut ? <NotAllFeatures /> : null}
        </>
      )}
    </article>
  );
}

/** For what the sheet is drawn up, as a sentence. */
function sayFor(region: string | undefined, date: string | null): string {
  const dating = date === null ? undefined : readDating(date, "event");
  const when = dating === undefined || isProblem(dating) ? undefined : sayDating(dating);
  if (region === undefined && when === undefined)
    return "For any place and date: dates are the earliest anywhere, or of the places named.";
  return `Claimed: ${[region, when].filter((said) => said !== undefined).join(", ")}.`;
}

const SheetRefused = ({ form, messages }: { form: string; messages: readonly string[] }) => (
  <article className={styles["page"]}>
    <PageHeading title="Field sheet">No sheet for what the address asks</PageHeading>
    {messages.map((message) => (
      <p key={message}>{message}</p>
    ))}
    <p>
      <TextLink to={`/sheets/${form}`}>The sheet of the form for any place and date</TextLink>
    </p>
  </article>
);
