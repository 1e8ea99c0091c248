import { useState } from "react";
import type { PartId } from "#server/domain/ids.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { Select } from "#web/shared/ui/Select.tsx";
import { useDesk } from "./desk.ts";
import { joinParts, partParts } from "./edit-piece.ts";
import styles from "./OriginPairs.module.css";

const HOW = [
  { id: "together", label: "cannot be of different origin" },
  { id: "separate", label: "cannot share one origin" },
] as const;

/** Which parts must be of one origin (one board, one hand), and which cannot be. */
export function OriginPairs() {
  const { piece, edit } = useDesk();
  const [how, setHow] = useState<"together" | "separate">("together");
  const [a, setA] = useState<PartId | null>(null);
  const [b, setB] = useState<PartId | null>(null);
  if (piece.parts.length < 2) return null;
  const name = (part: PartId) => piece.parts.find((each) => each.id === part)?.label ?? part;
  const said = [
    ...piece.together.map((group) => ({ parts: group, says: "of one origin" })),
    ...piece.separate.map((pair) => ({ parts: pair, says: "not of one origin" })),
  ];
  const choices = piece.parts.map((part) => ({ id: part.id, label: part.label }));
  return (
    <Disclosure summary={`Origins said to be one or apart (${said.length})`} level={3}>
      <div className={styles["pairs"]}>
        <ul>
          {said.map(({ parts, says }) => (
            <li key={`${says} ${parts.join()}`} className={styles["pair"]}>
              <span>
                {parts.map(name).join(" and ")}: {says}
              </span>
              <Button
                look="quiet"
                onPress={() =>
                  edit((now) =>
                    parts.slice(1).reduce((rest, part) => partParts(parts[0] as PartId, part)(rest), now),
                  )
                }
              >
                Take back
              </Button>
            </li>
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
    </Disclosure>
  );
}
