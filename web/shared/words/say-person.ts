/** Whoever did something, by name; an id says nothing to a reader. */
export const sayPerson = ({ id, name }: { readonly id: string; readonly name: string | null }): string =>
  name ?? (id === "local" ? "whoever sits at this machine" : "a former member");
