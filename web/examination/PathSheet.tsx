import { lazy, Suspense } from "react";
import type { NamesForPaths } from "#web/graph/paths-to-draw.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Sheet } from "#web/shared/ui/Sheet.tsx";
import { Waiting } from "#web/shared/ui/Waiting.tsx";
import type { Answer } from "./read-answer.ts";
import type { Strips } from "./use-strips.ts";

const PathView = lazy(async () => ({ default: (await import("#web/graph/PathView.tsx")).PathView }));

interface Props {
  answer: Extract<Answer, { kind: "examined" }>;
  strips: Strips;
  names: NamesForPaths;
  /** A finding, `all` for the whole piece, or undefined while it is closed. */
  drawn: string | undefined;
  onDraw: (drawn: string | undefined) => void;
}

/** The path view on a sheet of its own, for one finding or the whole piece. The graph library comes with it. */
export function PathSheet({ answer: { report, words }, strips, names, drawn, onDraw }: Props) {
  const of = report.findings.find((one) => one.id === drawn);
  return (
    <Sheet
      isOpen={drawn !== undefined}
      onClose={() => onDraw(undefined)}
      title={
        of ? (
          <>
            The ways from <i>{names.labelOf(of.feature)}</i> to its years
          </>
        ) : (
          "The ways from what was seen to its years"
        )
      }
      deeds={of ? <Button onPress={() => onDraw("all")}>Those of the whole piece</Button> : null}
    >
      <Suspense fallback={<Waiting what="the path view" />}>
        <PathView
          key={drawn}
          report={report}
          words={words}
          names={names}
          axis={strips.axis}
          finding={of?.id}
        />
      </Suspense>
    </Sheet>
  );
}
