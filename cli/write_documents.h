#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "geometry/result.h"
#include "joint/documents/report.h"

namespace sheerlap {

/// Writes documents into a folder, all of them or none.
///
/// The folder is made if it is missing. Each document is written under a temporary name
/// that starts with ".sheerlap-" and made safe on the disk; only then are all renamed.
/// If anything fails, the folder is as it was before. A program that is killed leaves
/// only whole documents, old or new, and perhaps temporary files that the next run
/// takes away. Documents of an earlier run that this one does not have are removed: a
/// folder whose "result.json" is ours is known to hold them. Nothing else is touched.
///
/// @errors  Unreadable: the folder or a file cannot be written, or another run is
///          writing there
Result<void> write_documents(const std::filesystem::path& folder,
                             const std::vector<Document>& documents);

/// Writes the charts of a record into a folder likewise; none that is there already is
/// removed.
Result<void> write_chart_files(const std::filesystem::path& folder,
                               const std::vector<Document>& files);

}  // namespace sheerlap
