import { type ComponentType, useEffect, useState } from "react";
import type { Props } from "./BeginDialog.tsx";

/**
 * The form that begins an examination, fetched once the page stands: it weighs too much for the first page, and has to be
 * there when its button is pressed, so that the next key reaches it. Undefined until then.
 */
export function useBeginDialog(): ComponentType<Props> | undefined {
  const [loaded, setLoaded] = useState<{ readonly BeginDialog: ComponentType<Props> }>();
  useEffect(() => {
    let isWanted = true;
    const fetchDialog = async () => {
      const module = await import("./BeginDialog.tsx");
      if (isWanted) setLoaded(module);
    };
    fetchDialog().catch(() => {
      // A file that does not arrive is fetched again with the page; until then the button waits.
    });
    return () => {
      isWanted = false;
    };
  }, []);
  return loaded?.BeginDialog;
}
