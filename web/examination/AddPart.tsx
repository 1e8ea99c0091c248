import { memo, useState } from "react";
import type { Part } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { rankByName } from "#web/shared/terms/rank-by-name.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { SuggestBox } from "#web/shared/ui/SuggestBox.tsx";
import styles from "./AddPart.module.css";
import { useDeeds } from "./desk.ts";
import { addPart, type Edit } from "./edit-piece.ts";
import type { StoredExamination } from "./read-answer.ts";
import { useKindsOfPart } from "./use-kinds-of-part.ts";

const MOST_OFFERED = 6;

interface Props {
  parts: readonly Part[];
  /** The parts that such a form usually has. */
  usual: NonNullable<StoredExamination["form"]>["parts"] | undefined;
}

/** Adds a part by its kind: by typing, or one of those that such a form usually has. */
export const AddPart = memo(function AddPart({ parts, usual = [] }: Props) {
  const { edit, learn } = useDeeds();
  const { all } = useKindsOfPart();
  const [words, setWords] = useState("");
  const choices = rankByName(
    all.filter(({ mergedInto }) => mergedInto === null),
    words,
  );
  const missing = usual.filter((kind) => !parts.some((part) => part.kind === kind.id));
  const add =
    (kinds: readonly { readonly id: string; readonly label: string }[]): Edit =>
    (before) =>
      kinds.reduce((now, kind) => addPart(kind.label, id<"term">(kind.id))(now), before);
  return (
    <section className={styles["add"]} aria-label="Add a part">
      {missing.length > 0 && parts.length === 0 ? (
        <p>
          <Button look="main" onPress={() => edit(add(missing))}>
            Record the {missing.length} parts such a piece usually has
          </Button>
        </p>
      ) : null}
      <SuggestBox
        label="Add a part"
        choices={choices.map(({ id: kind, label, otherLabels }) => ({
          id: kind,
          label,
          ...(otherLabels.length === 0 ? {} : { beside: otherLabels.join(", ") }),
        }))}
        words={words}
        onWords={setWords}
        placeholder="back, drawer, leg, handle …"
        none="No such kind of part. Take a broader one and name it yourself."
        onChoose={(chosen) => {
          learn(id<"term">(chosen.id), chosen.label);
          edit(add([chosen]));
          setWords("");
        }}
      />
      {missing.length > 0 && parts.length > 0 ? (
        <p className={styles["usual"]}>
          <span>Usual on this form:</span>
          {missing.slice(0, MOST_OFFERED).map((kind) => (
            <Button key={kind.id} look="quiet" onPress={() => edit(add([kind]))}>
              {kind.label}
            </Button>
          ))}
        </p>
      ) : null}
    </section>
  );
});
