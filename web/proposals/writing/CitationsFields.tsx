import { useState } from "react";
import {
  countCited,
  FIELDS_OF_CITED,
  reorderCited,
} from "#server/domain/proposals/form/citations-in-form.ts";
import { MOST_CITATIONS } from "#server/domain/proposals/form/claim-fields.ts";
import type { CslItem } from "#server/domain/source.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { BasisFields } from "./BasisFields.tsx";
import { deskOfCited, FormDeskContext, useFormDesk } from "./form-desk.ts";
import { sayCited } from "./say-cited.ts";
import { useKnownSources } from "./use-known-sources.ts";
import styles from "./writing.module.css";

/** Where a claim is from: one source, or several in the order in which they are told. */
export function CitationsFields() {
  const desk = useFormDesk();
  const known = useKnownSources();
  const [added, setAdded] = useState(0);
  /** Counts the times that the order was changed: each place begins anew then, with what came to it. */
  const [turn, setTurn] = useState(0);
  const said = countCited(desk.fields);
  const count = Math.max(1, said, added);
  const reorder = (order: readonly number[]) => {
    desk.put(reorderCited(desk.fields, order));
    setAdded(order.length);
    setTurn(turn + 1);
  };
  const places = Array.from({ length: count }, (_, nth) => nth);
  if (count === 1)
    return (
      <>
        <BasisFields known={known} />
        {said === 0 ? null : <AddAnother onPress={() => setAdded(2)} />}
      </>
    );
  return (
    <div className={styles["group"]}>
      <ol className={styles["cited"]}>
        {places.map((nth) => (
          <li key={`${turn} ${nth}`}>
            <FormDeskContext value={deskOfCited(desk, nth, FIELDS_OF_CITED)}>
              <Cited
                {...{ nth, known }}
                onFirst={nth === 0 ? undefined : () => reorder([nth, ...places.filter((one) => one !== nth)])}
                onGone={() => reorder(places.filter((one) => one !== nth))}
              />
            </FormDeskContext>
          </li>
        ))}
      </ol>
      {count < MOST_CITATIONS ? <AddAnother onPress={() => setAdded(count + 1)} /> : null}
    </div>
  );
}

const AddAnother = ({ onPress }: { onPress: () => void }) => (
  <p>
    <Button onPress={onPress}>Add another source</Button>
  </p>
);

interface CitedProps {
  nth: number;
  known: readonly CslItem[];
  onFirst: (() => void) | undefined;
  onGone: () => void;
}

/** One of several: a line of what it says, unfolded to be changed. */
function Cited({ nth, known, onFirst, onGone }: CitedProps) {
  const { fields, refusalAt } = useFormDesk();
  const isRefused = FIELDS_OF_CITED.some((name) => refusalAt(name) !== undefined);
  const [isOpen, setOpen] = useState(!fields["basis"]);
  const says = sayCited(fields, known);
  return (
    <Disclosure
      summary={`${nth + 1}. ${says}${nth === 0 ? " · told first" : ""}`}
      isOpen={isOpen || isRefused}
      onOpenChange={setOpen}
    >
      <div className={styles["fields"]}>
        <BasisFields known={known} />
        <p className={styles["steps"]}>
          {onFirst === undefined ? null : (
            <Button onPress={onFirst} aria-label={`Tell first: ${says}`}>
              Tell this one first
            </Button>
          )}
          <Button onPress={onGone} aria-label={`Take out: ${says}`}>
            Take it out
          </Button>
        </p>
      </div>
    </Disclosure>
  );
}
