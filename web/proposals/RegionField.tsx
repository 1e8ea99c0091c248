import { id } from "#server/domain/ids.ts";
import { TermField } from "../shared/terms/TermField.tsx";
import { useTermName } from "./use-term-name.ts";

interface Props {
  value: string | undefined;
  onChange: (region: string | undefined) => void;
}

/** One region, found by typing some of its name; emptied, it is any. */
export function RegionField({ value, onChange }: Props) {
  const name = useTermName(value);
  return (
    <TermField
      label="Region"
      kinds={["REGION"]}
      value={value === undefined ? undefined : id<"term">(value)}
      labelOf={() => name}
      placeholder="any region"
      onChange={onChange}
    />
  );
}
