import { memo, useState } from "react";
import type { Piece } from "#server/domain/examination.ts";
import type { PartId } from "#server/domain/ids.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { Select } from "#web/shared/ui/Select.tsx";
import { useDeeds } from "./desk.ts";
import { joinParts, partParts } from "./edit-piece.ts";
import styles from "./OriginPairs.module.css";

const HOW = [
  { id: "together", label: "cannot be of different origin" },
  { id: "separate", label: "cannot share one origin" },
] as const;

type Props = Pick<Piece, "parts" | "together" | "separate">;

/** Which parts must be of one origin (one board, one hand), and which cannot be. */
export const OriginPairs = memo(function OriginPairs({ parts, together, separate }: Props) {
  const [isOpen, setIsOpen] = useState(false);
  if (parts.length < 2) return null;
  return (
    <Disclosure
      summary={`Origins said to be one or apart (${together.length + separate.length})`}
      level={3}
      isOpen={isOpen}
      onOpenChange={setIsOpen}
    >
      {isOpen ? <PairForm parts={parts} together={together} separate={separate} /> : null}
    </Disclosure>
  );
});

function PairForm({ parts, together, separate }: Props) {
  const { edit } = useDeeds();
  const [how, setHow] = useState<"together" | "separate">("together");
  const [a, setA] = useState<PartId | null>(null);
  const [b, setB] = useState<PartId | null>(null);
  const name = (part: PartId) => parts.find((each) => each.id === part)?.label ?? part;
  const choices = parts.map((part) => ({ id: part.id, label: part.label }));
  return (
    <div className={styles["pairs"]}>
      <ul>
        {together.map((group) => (
          <SaidPair
            key={group.join()}
            parts={group}
            says={`${group.map(name).join(" and ")}: of one origin`}
          />
        ))}
        {separate.map((pair) => (
          <SaidPair
            key={pair.join()}
            parts={pair}
            says={`${pair.map(name).join(" and ")}: not of one origin`}
          />
        ))}
      </ul>
      <Select label="One part" choices={choices} value={a} onChange={setA} placeholder="choose" />
      <Select
        label="Another"
        choices={choices.filter((choice) => choice.id !== a)}
        value={b === a ? null : b}
        onChange={setB}
        placeholder="choose"
      />
      <RadioGroup label="They" choices={HOW} value={how} onChange={setHow} direction="column" />
      <p>
        <Button
          isDisabled={a === null || b === null || a === b}
          onPress={() => {
            if (a === null || b === null) return;
            edit(joinParts(a, b, how));
            setA(null);
            setB(null);
          }}
        >
          Record it
        </Button>
      </p>
    </div>
  );
}

function SaidPair({ parts, says }: { parts: readonly PartId[]; says: string }) {
  const { edit } = useDeeds();
  const [first, ...others] = parts;
  return (
    <li className={styles["pair"]}>
      <span>{says}</span>
      <Button
        look="quiet"
        onPress={() =>
          edit((piece) => others.reduce((rest, part) => partParts(first as PartId, part)(rest), piece))
        }
      >
        Take back
      </Button>
    </li>
  );
}
