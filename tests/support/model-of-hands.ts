import { HANDS, TOOLS, type Tool, type Try } from "./any-hands.ts";

/** A proposal as somebody would note it down on paper. */
export interface Noted {
  readonly by: number;
  readonly tool: Tool;
  readonly saysWhy: boolean;
  state: "draft" | "open" | "changes asked for" | "accepted" | "declined" | "withdrawn";
  version: number;
  /** Taken back as a draft, so that nobody else ever sees it. */
  neverOpened?: boolean;
  /** Note of the tool that it starts from, and the one it asks for. */
  from: string;
  to: string;
}

/** What a house with proposals has to do, told as plainly as possible and without anything of the program. */
export class ModelOfHands {
  readonly proposals: Noted[] = [];
  /** Notes of the tools by revision; the first is the one that the house began with. */
  readonly revisions: Record<Tool, string>[] = [
    Object.fromEntries(TOOLS.map((tool) => [tool, "0"])) as never,
  ];
  #count = 0;

  get notes(): Record<Tool, string> {
    return this.revisions.at(-1) as Record<Tool, string>;
  }

  /** A note that was never asked for. */
  newNote(): string {
    return String(++this.#count);
  }

  /** Whether it is done, and does it; `note` is what is asked for where something is. */
  does(tried: Try, note: string): boolean {
    const role = HANDS[tried.who]?.role ?? "reader";
    if (role === "reader") return false;
    if (tried.does === "make") {
      const { tool, isOpen, saysWhy, who } = tried;
      if (isOpen && !saysWhy) return false;
      const state = isOpen ? "open" : "draft";
      this.proposals.push({ by: who, tool, saysWhy, state, version: 1, from: this.notes[tool], to: note });
      return true;
    }
    const proposal = this.proposals[tried.which % Math.max(1, this.proposals.length)];
    if (proposal === undefined || tried.isStale) return false;
    const isMine = proposal.by === tried.who;
    const { state } = proposal;
    const fits = this.notes[proposal.tool] === proposal.from;
    switch (tried.does) {
      case "change":
        if (!isMine || !["draft", "open", "changes asked for"].includes(state)) return false;
        proposal.from = this.notes[proposal.tool];
        proposal.to = note;
        break;
      case "open":
        if (!isMine || !["draft", "changes asked for"].includes(state)) return false;
        if (!proposal.saysWhy || !fits) return false;
        proposal.state = "open";
        break;
      case "withdraw":
        if (!isMine || !["draft", "open", "changes asked for"].includes(state)) return false;
        proposal.neverOpened = state === "draft";
        proposal.state = "withdrawn";
        break;
      case "accept":
        if (isMine || role === "contributor" || state !== "open" || !fits) return false;
        this.revisions.push({ ...this.notes, [proposal.tool]: proposal.to });
        proposal.state = "accepted";
        break;
      case "decline":
        if (isMine || role === "contributor" || !tried.saysWhy) return false;
        if (!["open", "changes asked for"].includes(state)) return false;
        proposal.state = "declined";
        break;
      case "ask for changes":
        if (isMine || role === "contributor" || !tried.saysWhy || state !== "open") return false;
        proposal.state = "changes asked for";
        break;
    }
    proposal.version += 1;
    return true;
  }
}
