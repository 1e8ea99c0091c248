import type { CslItem } from "#server/domain/source.ts";
import { ChoiceField } from "./ChoiceField.tsx";
import { useFormDesk } from "./form-desk.ts";
import { PlainField } from "./PlainField.tsx";
import { SourceChoice } from "./SourceChoice.tsx";

const BASES = [
  {
    id: "published",
    label: "It is printed, and I can say where",
    beside: "book, article, patent, museum text",
  },
  {
    id: "common practice",
    label: "I have seen it in many pieces, or the trade knows it",
    beside: "no page to turn to",
  },
  { id: "from memory", label: "I remember it, or was told", beside: "unconfirmed, and shown so" },
] as const;

/** How whoever writes knows it, asked in plain words; printed things want a source and a place in it. */
export function BasisFields({ known }: { known: readonly CslItem[] }) {
  const { fields } = useFormDesk();
  return (
    <>
      <ChoiceField of="basis" label="How do you know it?" isLabelHidden choices={BASES} />
      {fields["basis"] === "published" ? <SourceChoice known={known} /> : null}
      {fields["basis"] ? (
        <PlainField
          of="citation-note"
          label="What exactly it says, or where you saw it (may be left out)"
          lines={2}
        />
      ) : null}
    </>
  );
}
