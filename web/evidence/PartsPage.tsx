import { useSearchParams } from "wouter";
import { DRAWN_FORMS, findDrawing } from "#web/drawings/part-shapes.ts";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { Select } from "../shared/ui/Select.tsx";
import { DrawnParts } from "./DrawnParts.tsx";
import { FeaturesOnPart } from "./FeaturesOnPart.tsx";
import { Kicker } from "./Kicker.tsx";
import styles from "./PartsPage.module.css";
import { PartTree } from "./PartTree.tsx";
import reading from "./reading.module.css";

const FIRST_FORM = "form.chest-of-drawers";
const forms = DRAWN_FORMS.map(({ form, label }) => ({ id: form, label }));

/** The evidence by part of a piece: point at a part in the drawing or the tree, and read what is looked for on it. */
export function PartsPage() {
  const [params, setParams] = useSearchParams();
  const drawing = findDrawing([params.get("form") ?? FIRST_FORM, FIRST_FORM]);
  const part = params.get("part");
  const look = (name: string, value: string) =>
    setParams((before) => {
      const next = new URLSearchParams(before);
      next.set(name, value);
      return next;
    });
  return (
    <>
      <header className={reading["head"]}>
        <Kicker steps={[{ to: "/evidence", name: "evidence" }]} />
        <PageHeading title="By part of a piece">By part of a piece</PageHeading>
        <p className={reading["note"]}>
          Choose a form and point at a part, or take a kind of part from the list: beside it stands what is
          looked for there.
        </p>
      </header>
      <div className={styles["page"]}>
        <div className={styles["drawn"]}>
          <Select
            label="Form"
            choices={forms}
            value={drawing?.form ?? null}
            onChange={(value) => look("form", value)}
          />
          {drawing ? (
            <DrawnParts drawing={drawing} part={part} onChoose={(kind) => look("part", kind)} />
          ) : null}
          <Disclosure level={2} summary="All kinds of part">
            <PartTree form={drawing?.form ?? FIRST_FORM} part={part} />
          </Disclosure>
        </div>
        <div className={styles["features"]}>
          {part === null ? (
            <p className={reading["empty"]}>No part is chosen yet. Point at one in the drawing.</p>
          ) : (
            <FeaturesOnPart key={part} id={part} />
          )}
        </div>
      </div>
    </>
  );
}
