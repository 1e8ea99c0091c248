import { memo } from "react";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { HATCHED_BY, type HatchedBy } from "./use-weighed-shapes.ts";

interface Props {
  value: HatchedBy;
  onChange: (value: HatchedBy) => void;
}

/** What the drawing of the piece is hatched by. */
export const HatchedByChoice = memo(function HatchedByChoice({ value, onChange }: Props) {
  return (
    <div className="screen-only">
      <RadioGroup label="Hatched by" choices={HATCHED_BY} value={value} onChange={onChange} />
    </div>
  );
});
