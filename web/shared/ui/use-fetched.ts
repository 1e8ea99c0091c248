import { startTransition, useEffect, useState } from "react";

const fetched = new Map<unknown, unknown>();

/**
 * A module that is fetched once the page stands, because it weighs too much to be waited for, and is there when it is
 * wanted, so that the next key reaches what it shows. Undefined until then. `load` is the same function each time.
 */
export function useFetched<Module>(load: () => Promise<Module>): Module | undefined {
  const [module, setModule] = useState(() => fetched.get(load) as Module | undefined);
  useEffect(() => {
    if (module !== undefined) return;
    let isWanted = true;
    load()
      .then((loaded) => {
        fetched.set(load, loaded);
        if (isWanted) startTransition(() => setModule(() => loaded));
      })
      .catch(() => {
        // A file that does not arrive is fetched again with the page; until then what needs it waits.
      });
    return () => {
      isWanted = false;
    };
  }, [load, module]);
  return module;
}
