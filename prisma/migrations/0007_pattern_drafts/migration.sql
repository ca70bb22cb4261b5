-- A draft holds the whole pattern as it is being edited, no longer single texts by path. Nobody has a draft of the old
-- kind: no version of Sizewright that made them was ever released.
DELETE FROM late_save;
DELETE FROM draft;
