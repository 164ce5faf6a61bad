/** Ideas of the levels beyond and behind, each by its key, as a child might say them. */
export const furtherIdeas: Readonly<Record<string, string>> = {};
