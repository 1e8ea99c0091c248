/** How something is made of a whole graph. */
export interface SurveyOptions {
  /** Called often: lets everybody else have a turn. */
  readonly turn?: () => Promise<void>;
  /** Told again and again how much of it is made, from 0 to 1. */
  readonly onProgress?: (share: number) => void;
}
