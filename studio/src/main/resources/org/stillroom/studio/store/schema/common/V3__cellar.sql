-- One row. Who writes to the log of batches counts up here first and so waits for who is writing: what a vessel holds may have
-- come from any other, and whether an entry can have happened is judged by the whole log.
CREATE TABLE cellar (
    id INTEGER PRIMARY KEY,
    writings BIGINT NOT NULL
);
INSERT INTO cellar (id, writings) VALUES (1, 0);
