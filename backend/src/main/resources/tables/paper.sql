select e.entry_id, e.of_table, e.file_name, e.file_row, i.written_by, i.written_at
from paper_entry e join paper_import i on i.id = e.import_id
where i.lab_day_id = :day order by i.written_at, e.file_name, e.file_row, e.entry_id
