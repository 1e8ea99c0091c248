import { useCallback } from "react";
import { type Drawn, FormDrawing } from "#web/drawings/FormDrawing.tsx";
import type { DrawnForm, Shape } from "#web/drawings/shape.ts";
import { Tabs } from "../shared/ui/Tabs.tsx";

interface Props {
  drawing: DrawnForm;
  /** The kind of part that is chosen. */
  part: string | null;
  onChoose: (kind: string) => void;
}

/** A form whose parts are pointed at to choose their kind. */
export function DrawnParts({ drawing, part, onChoose }: Props) {
  const drawnAs = useCallback(
    ({ label, kind }: Shape): Drawn => ({ says: label, speaks: "nothing", isChosen: kind === part }),
    [part],
  );
  const choose = useCallback(({ kind }: Shape) => onChoose(kind), [onChoose]);
  const withPart = drawing.views.findIndex(({ shapes }) => shapes.some(({ kind }) => kind === part));
  return (
    <figure>
      <Tabs
        key={drawing.form}
        label="Sides of the form"
        startsAt={Math.max(withPart, 0)}
        tabs={drawing.views.map((view) => ({
          id: view.key,
          label: view.label,
          content: (
            <FormDrawing
              view={view}
              label={`${drawing.label}, ${view.label.toLowerCase()}`}
              drawnAs={drawnAs}
              onChoose={choose}
            />
          ),
        }))}
      />
      <figcaption>Drawn as a usual one of its form, not to measure.</figcaption>
    </figure>
  );
}
