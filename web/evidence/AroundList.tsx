import { type KeyboardEvent, useEffect } from "react";
import { LIST_MOVES } from "../shared/navigation/list-moves.ts";
import { AroundItem } from "./AroundItem.tsx";
import styles from "./AroundPage.module.css";
import { aroundEntryId } from "./around-entry-id.ts";
import type { AroundEntry } from "./around-groups.ts";

interface Props {
  title: string;
  /** The term in the middle and its years in words. */
  centre: { readonly label: string; readonly says: string | undefined } | undefined;
  entries: readonly AroundEntry[];
  open: string | undefined;
  onOpen: (id: string | undefined) => void;
  onLight: (id: string) => void;
}

/** All that the drawing shows, in its order: the content of it, and the keyboard's way through it. */
export function AroundList({ title, centre, entries, open, onOpen, onLight }: Props) {
  useEffect(() => {
    // Beside the drawing the list scrolls for itself; below it, it stays where it is.
    const list = document.getElementById(open === undefined ? "" : aroundEntryId(open));
    const frame = list?.closest("section");
    if (list && frame && getComputedStyle(frame).overflowY === "auto")
      list.scrollIntoView({ block: "nearest" });
  }, [open]);
  const move = (event: KeyboardEvent<HTMLOListElement>) => {
    const lines = [...event.currentTarget.querySelectorAll<HTMLElement>("button[aria-expanded]")];
    const at = lines.indexOf(document.activeElement as HTMLElement);
    const next = at === -1 ? undefined : LIST_MOVES[event.key]?.(at, lines.length - 1);
    if (next === undefined) return;
    event.preventDefault();
    lines[next]?.focus();
  };
  return (
    <section className={styles["list"]} aria-label={title}>
      <h2>{title}</h2>
      {centre ? (
        <p className={styles["centre"]}>
          <b>{centre.label}</b> {centre.says ?? "no years stated"}
        </p>
      ) : null}
      <ol onKeyDown={move}>
        {entries.map((entry) => (
          <li
            key={entry.id}
            id={aroundEntryId(entry.id)}
            className={entry.step === 2 ? styles["further"] : undefined}
            onFocus={() => onLight(entry.id)}
          >
            <AroundItem
              entry={entry}
              isOpen={entry.id === open}
              onOpen={(isOpen) => onOpen(isOpen ? entry.id : undefined)}
            />
          </li>
        ))}
      </ol>
    </section>
  );
}
