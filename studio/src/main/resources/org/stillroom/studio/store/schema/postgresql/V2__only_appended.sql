-- The history and the revisions can only grow.
CREATE FUNCTION only_appended() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION '% is only appended to', TG_TABLE_NAME;
END $$;
CREATE TRIGGER history_only_grows BEFORE UPDATE OR DELETE ON history FOR EACH ROW EXECUTE FUNCTION only_appended();
CREATE TRIGGER revision_only_grows BEFORE UPDATE OR DELETE ON revision FOR EACH ROW EXECUTE FUNCTION only_appended();
CREATE TRIGGER history_is_not_emptied BEFORE TRUNCATE ON history FOR EACH STATEMENT EXECUTE FUNCTION only_appended();
CREATE TRIGGER revision_is_not_emptied BEFORE TRUNCATE ON revision FOR EACH STATEMENT EXECUTE FUNCTION only_appended();
