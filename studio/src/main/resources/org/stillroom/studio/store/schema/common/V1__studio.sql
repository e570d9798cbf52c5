-- One script for both databases: ${id}, ${json} and ${bytes} are filled in by Store.

-- What happened, in the order in which it happened. Nothing is ever changed or taken out here; an undo is an entry of its own.
CREATE TABLE history (
    id ${id},
    at TEXT NOT NULL,
    subject TEXT NOT NULL,
    kind TEXT NOT NULL,
    body ${json} NOT NULL,
    undoes BIGINT REFERENCES history (id),
    request TEXT NOT NULL UNIQUE
);
CREATE INDEX history_subject ON history (subject, id);
CREATE UNIQUE INDEX history_undone_once ON history (undoes);

CREATE TABLE recipe (
    id TEXT PRIMARY KEY,
    title TEXT NOT NULL,
    revision INTEGER NOT NULL,
    changed TEXT NOT NULL,
    archived INTEGER NOT NULL DEFAULT 0,
    removed INTEGER NOT NULL DEFAULT 0
);

CREATE TABLE revision (
    recipe TEXT NOT NULL REFERENCES recipe (id),
    number INTEGER NOT NULL,
    at TEXT NOT NULL,
    title TEXT NOT NULL,
    content TEXT NOT NULL,
    note TEXT,
    PRIMARY KEY (recipe, number)
);

CREATE TABLE draft (
    recipe TEXT PRIMARY KEY REFERENCES recipe (id),
    based_on INTEGER NOT NULL,
    at TEXT NOT NULL,
    body TEXT NOT NULL
);

CREATE TABLE lot (
    id TEXT PRIMARY KEY,
    version INTEGER NOT NULL,
    name TEXT NOT NULL,
    kind TEXT NOT NULL,
    body ${json} NOT NULL,
    amount DOUBLE PRECISION NOT NULL,
    removed INTEGER NOT NULL DEFAULT 0
);

CREATE TABLE instrument (
    id TEXT PRIMARY KEY,
    version INTEGER NOT NULL,
    name TEXT NOT NULL,
    kind TEXT NOT NULL,
    body ${json} NOT NULL,
    removed INTEGER NOT NULL DEFAULT 0
);

CREATE TABLE make (
    id TEXT PRIMARY KEY,
    recipe TEXT NOT NULL REFERENCES recipe (id),
    revision INTEGER NOT NULL,
    begun TEXT NOT NULL,
    start ${json} NOT NULL,
    finished TEXT
);

CREATE TABLE batch (
    id TEXT PRIMARY KEY,
    make TEXT NOT NULL UNIQUE REFERENCES make (id),
    recipe TEXT NOT NULL REFERENCES recipe (id),
    number INTEGER NOT NULL UNIQUE,
    made TEXT NOT NULL,
    body ${json} NOT NULL
);

CREATE TABLE photo (
    id TEXT PRIMARY KEY,
    at TEXT NOT NULL,
    type TEXT NOT NULL,
    bytes ${bytes} NOT NULL
);

CREATE TABLE setting (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
);

CREATE TABLE session (
    token TEXT PRIMARY KEY,
    until TEXT NOT NULL
);
