declare module "oidc-provider" {
  import type { RequestListener } from "node:http";

  interface Interaction {
    readonly uid: string;
    readonly prompt: { readonly name: string };
    readonly params: Record<string, string>;
  }
  export default class Provider {
    constructor(issuer: string, configuration: object);
    callback(): RequestListener;
    interactionDetails(request: unknown, response: unknown): Promise<Interaction>;
    interactionFinished(request: unknown, response: unknown, result: object): Promise<void>;
    Grant: new (of: {
      accountId: string;
      clientId: string;
    }) => {
      addOIDCScope(scope: string): void;
      save(): Promise<string>;
    };
  }
}
