import { type ReactNode, useState } from "react";
import { Button } from "./Button.tsx";
import styles from "./ShowMore.module.css";

/** The first of a list that is all there, and a line that shows the rest when asked; nothing where all is shown. `beside` stands after how many. */
export function useSomeOf<One>(
  all: readonly One[],
  atFirst: number,
  beside = "",
): { readonly shown: readonly One[]; readonly rest: ReactNode } {
  const [isWhole, setWhole] = useState(false);
  if (isWhole || all.length <= atFirst) return { shown: all, rest: null };
  return {
    shown: all.slice(0, atFirst),
    rest: (
      <p className={styles["more"]}>
        <Button onPress={() => setWhole(true)}>Show all {all.length}</Button> {atFirst} shown{beside}
      </p>
    ),
  };
}
