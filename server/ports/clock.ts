/** The time now, as ISO 8601 in UTC. */
export type Clock = () => string;
