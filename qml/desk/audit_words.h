// What a line of the audit trail says, in words for who reads it. One table; an action of a newer hub is
// shown as it stands.
#pragma once

#include <QtCore/QString>

#include "sync/protocol/desk_service.pb.h"

namespace newel::desk {

QString auditWords(const v1::AuditLine& line);

}  // namespace newel::desk
