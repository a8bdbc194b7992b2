#include "db/files/disk_errors.h"

#include <cerrno>

namespace headcap::db {

using core::StoreError;

StoreError::Code storeCodeOfErrno(int error) {
    if (error == ENOSPC || error == EDQUOT) {
        return StoreError::Code::diskFull;
    }
    if (error == EROFS || error == EACCES || error == EPERM) {
        return StoreError::Code::readOnly;
    }
    return StoreError::Code::ioFailed;
}

void throwStoreError(const std::filesystem::filesystem_error& error) {
    throw StoreError(storeCodeOfErrno(error.code().value()),
                     error.path1().string() + ": " + error.code().message());
}

} // namespace headcap::db
