import type { Store } from "#server/ports/store.ts";

/** The same store; `before` is told of each call first, and can stop it by throwing. */
export const watchStore = (store: Store, before: (call: string) => void): Store =>
  new Proxy(store, {
    get(target, name) {
      const member: unknown = Reflect.get(target, name, target);
      if (typeof member !== "function") return member;
      return (...args: unknown[]) => {
        before(String(name));
        return Reflect.apply(member, target, args);
      };
    },
  });
