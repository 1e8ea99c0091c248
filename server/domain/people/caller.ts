/** What a person may do in a house, from least to most; each may do what those before it may. */
export const ROLES = ["reader", "contributor", "reviewer", "owner"] as const;
export type Role = (typeof ROLES)[number];

/** Who asks for something. */
export interface Caller {
  /** Id of a person, which says nothing of who it is; `local` for whoever sits at a machine that is not shared. */
  readonly id: string;
  readonly role: Role;
  /** How it is known who asks: nobody else reaches the machine, a signed-in browser, or a token of a script. */
  readonly via: "loopback" | "session" | "token";
  /** The role asks for a second step in this house, and there was none: until then it goes no further than a reader. */
  readonly isHeld?: true;
}

/** Whoever uses a machine of their own, where nobody else gets in and no account is needed. */
export const LOCAL_CALLER: Caller = { id: "local", role: "owner", via: "loopback" };

/** Whether others use the house as well: where one signs in. */
export const sharesTheHouse = ({ via }: Caller): boolean => via !== "loopback";
