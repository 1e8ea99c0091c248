// The package citeproc ships no types; what the tests use of it.
declare module "citeproc" {
  interface System {
    retrieveLocale(language: string): string;
    retrieveItem(id: string): unknown;
  }
  export class Engine {
    constructor(system: System, style: string, language: string, forced: boolean);
    setOutputFormat(format: "text"): void;
    updateItems(ids: readonly string[]): void;
    makeCitationCluster(cited: readonly { readonly id: string }[]): string;
  }
}
