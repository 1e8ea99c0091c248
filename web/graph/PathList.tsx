import { type KeyboardEvent, useState } from "react";
import { LIST_MOVES } from "#web/shared/navigation/list-moves.ts";
import styles from "./PathList.module.css";
import type { PicturePath } from "./path-picture.ts";

interface Props {
  paths: readonly PicturePath[];
  lit: string | undefined;
  onLight: (path: string | undefined) => void;
}

const VERDICTS: Readonly<Record<PicturePath["verdict"], string>> = {
  against: "✕",
  unusual: "∕",
  for: "●",
  silent: "○",
  excluded: "–",
};

/** The paths as an ordered list: the text of the drawing, and the keyboard's way through it. */
export function PathList({ paths, lit, onLight }: Props) {
  const [current, setCurrent] = useState(0);
  const move = (event: KeyboardEvent<HTMLOListElement>) => {
    const next = LIST_MOVES[event.key]?.(current, paths.length - 1);
    const path = next === undefined ? undefined : paths[next];
    if (next === undefined || !path) return;
    event.preventDefault();
    setCurrent(next);
    onLight(path.id);
    event.currentTarget.querySelectorAll("button")[next]?.focus();
  };
  return (
    <ol className={styles["list"]} aria-label="The ways, one by one" onKeyDown={move}>
      {paths.map((path, i) => (
        <li key={path.id}>
          <button
            type="button"
            className={styles["path"]}
            data-verdict={path.verdict}
            aria-pressed={path.id === lit}
            tabIndex={i === Math.min(current, paths.length - 1) ? 0 : -1}
            onClick={() => {
              setCurrent(i);
              onLight(path.id === lit ? undefined : path.id);
            }}
          >
            <i aria-hidden="true">{VERDICTS[path.verdict]}</i>
            <span>
              {path.says}
              {path.source === undefined ? null : <small>{path.source}</small>}
            </span>
          </button>
        </li>
      ))}
    </ol>
  );
}
