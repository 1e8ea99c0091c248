import type { Part } from "#server/domain/examination.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import { TermField } from "#web/shared/terms/TermField.tsx";
import { Button } from "#web/shared/ui/Button.tsx";
import { Select } from "#web/shared/ui/Select.tsx";
import { TextField } from "#web/shared/ui/TextField.tsx";
import { useDeeds, useDesk } from "./desk.ts";
import { changePart, removePart } from "./edit-piece.ts";
import { mayLieWithin } from "./may-lie-within.ts";
import styles from "./ObservationItem.module.css";
import { problemAt } from "./problem-at.ts";
import { useTyped } from "./use-typed.ts";

const OF_THE_PIECE = "of-the-piece";

/** The fields of a part; each change is stored at once. */
export function PartForm({ part }: { part: Part }) {
  const { piece, problems } = useDesk();
  const { edit, glossary, learn, choosePart } = useDeeds();
  const label = useTyped(part.label);
  const at = piece.parts.findIndex((each) => each.id === part.id);
  const refusal = (field: string) => problemAt(problems, `parts.${at}.${field}`)?.message;
  const keep = () => {
    const name = label.text.trim();
    if (name !== "" && name !== label.before) edit(changePart(part.id, { label: name }), label.since);
    label.end();
  };
  const term = (field: "kind" | "region") => (chosen: TermId | undefined, name: string) => {
    if (chosen !== undefined) learn(chosen, name);
    edit(changePart(part.id, { [field]: chosen }));
  };
  const labelRefusal = refusal("label");
  const withinRefusal = refusal("within");
  return (
    <div className={styles["fields"]}>
      <TextField
        label="Name"
        value={label.text}
        onChange={label.type}
        onBlur={keep}
        onKeyDown={(event) => event.key === "Enter" && keep()}
        maxLength={200}
        {...(labelRefusal === undefined ? {} : { refusal: labelRefusal })}
      />
      <TermField
        label="Kind of part"
        kinds={["PART"]}
        value={part.kind}
        labelOf={glossary.labelOf}
        refusal={refusal("kind")}
        onChange={term("kind")}
      />
      <Select
        label="Lies within"
        value={part.within ?? OF_THE_PIECE}
        choices={[
          { id: OF_THE_PIECE, label: "the piece itself" },
          ...piece.parts
            .filter((other) => mayLieWithin(piece.parts, part.id, other.id))
            .map((other) => ({ id: other.id as string, label: other.label })),
        ]}
        onChange={(within) =>
          edit(changePart(part.id, { within: within === OF_THE_PIECE ? undefined : id<"part">(within) }))
        }
      />
      {withinRefusal === undefined ? null : <p role="alert">{withinRefusal}</p>}
      <TermField
        label="Made elsewhere, in"
        kinds={["REGION"]}
        value={part.region}
        labelOf={glossary.labelOf}
        placeholder="only if known"
        refusal={refusal("region")}
        onChange={term("region")}
      />
      <p>
        <Button
          onPress={() => {
            choosePart(undefined);
            edit(removePart(part.id));
          }}
        >
          Remove {part.label}
        </Button>
      </p>
    </div>
  );
}
