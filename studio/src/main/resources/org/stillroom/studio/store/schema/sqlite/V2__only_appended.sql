-- The history and the revisions can only grow.
CREATE TRIGGER history_is_not_changed BEFORE UPDATE ON history BEGIN SELECT RAISE(ABORT, 'the history is only appended to'); END;
CREATE TRIGGER history_is_not_cut BEFORE DELETE ON history BEGIN SELECT RAISE(ABORT, 'the history is only appended to'); END;
CREATE TRIGGER revision_is_not_changed BEFORE UPDATE ON revision BEGIN SELECT RAISE(ABORT, 'a revision is never changed'); END;
CREATE TRIGGER revision_is_not_cut BEFORE DELETE ON revision BEGIN SELECT RAISE(ABORT, 'a revision is never changed'); END;
