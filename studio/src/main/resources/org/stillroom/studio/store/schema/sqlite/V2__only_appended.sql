-- The history and the revisions can only grow.
CREATE TRIGGER history_is_not_changed BEFORE UPDATE ON history BEGIN SELECT RAISE(ABORT, 'the history is only appended to'); END;
CREATE TRIGGER history_is_not_cut BEFORE DELETE ON history BEGIN SELECT RAISE(ABORT, 'the history is only appended to'); END;
CREATE TRIGGER revision_is_not_changed BEFORE UPDATE ON revision BEGIN SELECT RAISE(ABORT, 'a revision is never changed'); END;
CREATE TRIGGER revision_is_not_cut BEFORE DELETE ON revision BEGIN SELECT RAISE(ABORT, 'a revision is never changed'); END;
-- INSERT OR REPLACE takes the old row out without asking the triggers above.
CREATE TRIGGER history_is_not_replaced BEFORE INSERT ON history
WHEN EXISTS (SELECT 1 FROM history WHERE id = NEW.id OR request = NEW.request OR undoes = NEW.undoes)
BEGIN SELECT RAISE(ABORT, 'the history is only appended to'); END;
CREATE TRIGGER revision_is_not_replaced BEFORE INSERT ON revision
WHEN EXISTS (SELECT 1 FROM revision WHERE recipe = NEW.recipe AND number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'a revision is never changed'); END;
