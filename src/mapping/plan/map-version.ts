/**
 * The version of plans and records that this library writes. It is raised when what was written before would be
 * read otherwise; names that are only added do not raise it.
 */
export const MAP_VERSION = 2;
