import { type RefObject, useEffect, useState } from "react";
import { useKeptState } from "#web/shared/navigation/use-kept-state.ts";

const ADDRESS = /^#strip-([A-Za-z0-9][A-Za-z0-9._-]*)$/;

/**
 * The strip that the address names after `#strip-`, where these are the strips of the page. It is brought into sight and
 * under the keyboard once; not again for who comes back.
 */
export function useAskedStrip(within: RefObject<HTMLElement | null>, isPage: boolean): string | undefined {
  const [asked] = useState(() => (isPage ? ADDRESS.exec(window.location.hash)?.[1] : undefined));
  const [isShown, setShown] = useKeptState(isPage ? "strip shown" : undefined, false);
  useEffect(() => {
    if (isShown || asked === undefined) return;
    for (const row of within.current?.querySelectorAll<HTMLElement>("[data-strip]") ?? [])
      if (row.dataset["strip"] === asked) {
        row.focus({ preventScroll: true });
        row.scrollIntoView({ block: "center" });
      }
    setShown(() => true);
  }, [asked, isShown, setShown, within]);
  return asked;
}
