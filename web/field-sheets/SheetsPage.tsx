import { useSuspenseQuery } from "@apollo/client/react";
import { useState, useTransition } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { SearchField } from "../shared/ui/SearchField.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { type FormGroup, groupForms } from "./group-forms.ts";
import styles from "./Sheets.module.css";
import { SheetFormsDocument } from "./SheetsPage.graphql.ts";

const FORMS_AT_ONCE = 200;

/** All forms by their broader form, each with its field sheet; found by typing. */
export function SheetsPage() {
  const { data, fetchMore } = useSuspenseQuery(SheetFormsDocument, { variables: { first: FORMS_AT_ONCE } });
  const [words, setWords] = useState("");
  const [isLoading, startLoading] = useTransition();
  const { edges, pageInfo, totalCount } = data.terms;
  const groups = groupForms(
    edges.map((edge) => edge.node),
    words,
  );
  const found = groups.reduce((sum, { forms }) => sum + forms.length, 0);
  return (
    <>
      <header className={styles["head"]}>
        <PageHeading title="Field sheets">Field sheets</PageHeading>
        <p className={styles["note"]}>
          What to look for on a piece, part by part, in the order in which one goes round it: as it stands,
          drawers out, from behind, from underneath. Each sheet prints on a few pages, with small drawings,
          boxes to tick and room for notes. Choose the form; region and claimed date can be added on its page.
        </p>
        <div className={`screen-only ${styles["search"]}`}>
          <SearchField label="Find a form" value={words} onChange={setWords} />
          <p role="status" className={styles["found"]}>
            {words.trim() === ""
              ? `${totalCount} forms`
              : found === 1
                ? "1 form found"
                : `${found} forms found`}
          </p>
        </div>
      </header>
      {found === 0 ? (
        <p className={styles["empty"]}>
          {totalCount === 0
            ? "No forms yet. They come with the first claims that name them."
            : "No form by these words. Try a broader one: chest, table, chair, desk."}
        </p>
      ) : (
        groups.map((group) => <Group key={group.id} group={group} />)
      )}
      {pageInfo.hasNextPage ? (
        <p className="screen-only">
          <Button
            isDisabled={isLoading}
            onPress={() =>
              startLoading(async () => {
                await fetchMore({ variables: { after: pageInfo.endCursor } });
              })
            }
          >
            Show more
          </Button>{" "}
          {edges.length} of {totalCount} shown
        </p>
      ) : null}
    </>
  );
}

const Group = ({ group }: { group: FormGroup }) => (
  <section className={styles["group"]}>
    <h2>{group.label}</h2>
    <ul>
      {group.forms.map(({ id, label, depth, otherLabels }) => (
        <li key={id} className={depth > 1 ? styles["within"] : undefined}>
          <TextLink to={`/sheets/${id}`}>{label}</TextLink>
          {otherLabels.length > 0 ? <span> {otherLabels.join(", ")}</span> : null}
        </li>
      ))}
    </ul>
  </section>
);
